using Slowglow.Diagnosis;
using Slowglow.Sheets.Setups;

namespace Slowglow.Cli.Json;

/// <summary>A reading worth taking; an outcome's edges are null where it is open on that side.</summary>
internal sealed record NextJson(
    string Where,
    string Kind,
    object Setup,
    double Bits,
    double Minutes,
    string Risk,
    string Why,
    IReadOnlyList<Outcome> Outcomes
)
{
    public static NextJson From(NextReading n, IReadOnlyList<Setup> known) =>
        new(n.Probe.Where, n.Probe.KindText, SetupJson.From(n.Setup, known), n.Bits, n.Minutes, n.Risk, n.Why, n.Outcomes);
}
