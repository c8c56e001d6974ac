using Slowglow.Circuits;
using Slowglow.Circuits.Solved;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>One of our resting states.</summary>
/// <param name="Unknowns">Volts of every unknown.</param>
/// <param name="Resistance">Volts at a row for an ampere into a column, [row * unknowns + column].</param>
internal sealed record CrestWorld(
    Circuit Circuit,
    IReadOnlyList<Fault> Faults,
    bool Settled,
    double[] Unknowns,
    float[] Resistance
)
{
    public string Name => Faults.Count == 0 ? "healthy" : Faults[0].ToString();

    /// <summary>Volts by net, those included that float.</summary>
    public Dictionary<string, double> Volts { get; } =
        Circuit.Rows.Where(r => r.Value >= 0).ToDictionary(r => r.Key, r => Unknowns[r.Value]);

    /// <summary>What a current, amperes, pushed into any one net could move this one by, volts.</summary>
    public double Moved(string net, double amps) =>
        amps * Resistance.AsSpan(Circuit.Rows[net] * Unknowns.Length, Unknowns.Length).ToArray().Max(Math.Abs);

    /// <summary>Held by nothing but leakage, as our solver tells its user.</summary>
    public bool Floats(string net) => Resistance[Circuit.Rows[net] * (Unknowns.Length + 1)] > Answers.FloatingOhms;
}
