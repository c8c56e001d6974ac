using Slowglow.Bench.Questions;
using Slowglow.Sheets.Setups;

namespace Slowglow.Cli.Json;

/// <summary>What a point should read; the figures are null where no figure can be given (a net held by nothing).</summary>
internal sealed record ExpectationJson(
    string Where,
    string Kind,
    object Setup,
    double Nominal,
    double Low,
    double High,
    string Unit
)
{
    public static ExpectationJson From(Expectation e, Setup setup, IReadOnlyList<Setup> known) =>
        new(e.Probe.Where, e.Probe.KindText, SetupJson.From(setup, known), e.Nominal, e.Low, e.High, e.Unit);
}
