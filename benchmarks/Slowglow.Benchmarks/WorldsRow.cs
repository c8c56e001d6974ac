using System.Globalization;

namespace Slowglow.Benchmarks;

/// <summary>One line of the table of worlds. Times are seconds for one world.</summary>
internal sealed record WorldsRow(string Sheet, int Worlds, double Ours, int ReferenceWorlds, double Reference)
{
    public const string Heading = "sheet              worlds   ours, ms each   reference, ms each (of)      ratio";

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Sheet, -16} {Worlds, 8} {Ours * 1e3, 15:0.00} {Reference * 1e3, 20:0} ({ReferenceWorlds, 3}) {Reference / Ours, 11:0}"
        );
}
