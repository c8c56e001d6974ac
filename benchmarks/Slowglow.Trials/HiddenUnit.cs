using Slowglow.Circuits;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Trials;

/// <summary>
/// A unit with a fault that the program does not know, and parts of its own within their tolerances. It can only be measured: with the loading,
/// the error and the digits of a handheld meter.
/// </summary>
internal sealed class HiddenUnit
{
    private readonly Worlds worlds;
    private readonly Random random;
    private readonly double[] deviations;

    public HiddenUnit(Worlds worlds, IReadOnlyList<Fault> faults, Random random)
    {
        (this.worlds, Faults, this.random) = (worlds, faults, random);
        deviations = [.. worlds.Circuit.Parameters.Select(_ => Normal())];
    }

    /// <summary>The cause first; then the fuse it blew, if any.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    public string Part => Faults[0].Part;

    /// <summary>What the meter shows; null when the unit gives no steady figure.</summary>
    public Reading? Read(Probe probe, Setup setup)
    {
        var meter = MeterClass.Handheld;
        var answer = worlds.Ask(setup, [Faults], [probe], meter)[0][0];
        return answer.Kind switch
        {
            AnswerKind.Value => Shown(probe, setup, meter, Exact(answer, probe)),
            AnswerKind.Overload => Over(probe, setup, meter),
            AnswerKind.Floating => probe.Kind is ProbeKind.Ohm or ProbeKind.Diode
                ? Over(probe, setup, meter)
                : Shown(probe, setup, meter, 0),
            _ => null,
        };
    }

    /// <summary>Nominal parts' answer moved by this unit's own parts, to first order; what cannot be negative moves by logarithm.</summary>
    private double Exact(Answer answer, Probe probe)
    {
        double moved = 0;
        for (var k = 0; k < answer.Spread.Length; k++)
        {
            moved += answer.Spread[k] * deviations[k];
        }
        var scale = Scale.Of(probe);
        return scale.From(scale.To(answer.Value) + scale.Slope(answer.Value) * moved);
    }

    private Reading Shown(Probe probe, Setup setup, MeterClass meter, double exact)
    {
        if (probe.Kind == ProbeKind.Ohm && exact > 40e6)
        {
            return Over(probe, setup, meter);
        }
        var off = exact * (1 + ErrorModel.MeterError(probe, meter) * Normal());
        var digit = ErrorModel.Resolution(Math.Abs(off), meter);
        return new(probe, setup, MeterSaid.Value, Math.Round(off / digit) * digit, meter, "", Place.None);
    }

    private static Reading Over(Probe probe, Setup setup, MeterClass meter) =>
        new(probe, setup, MeterSaid.Overload, double.NaN, meter, "", Place.None);

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
