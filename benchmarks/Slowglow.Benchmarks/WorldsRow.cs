using System.Globalization;

namespace Slowglow.Benchmarks;

/// <summary>One line of the table of worlds. Times are seconds for one world; the reference from our means, and from everything discharged.</summary>
internal sealed record WorldsRow(
    string Sheet,
    int Worlds,
    double Ours,
    int ReferenceWorlds,
    double Reference,
    int WorldsFromRest,
    double FromRest
)
{
    public const string Heading =
        "sheet              worlds   ours, ms each   reference from our means, ms (of)    ratio   from rest, ms (of)    ratio";

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Sheet, -16} {Worlds, 8} {Ours * 1e3, 15:0.00} {Reference * 1e3, 26:0} ({ReferenceWorlds, 3}) {Reference / Ours, 10:0} {FromRest * 1e3, 14:0} ({WorldsFromRest}) {FromRest / Ours, 9:0}"
        );
}
