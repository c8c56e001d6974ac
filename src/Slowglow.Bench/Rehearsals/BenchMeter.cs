using Slowglow.Bench.Questions;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// A meter with an error of its own on each kind of range, which stays, a little scatter from reading to reading, and digits that end.
/// </summary>
internal sealed class BenchMeter
{
    /// <summary>Where ordinary meters give up.</summary>
    private const double MostOhms = 40e6;

    private readonly Random random;
    private readonly double volts;
    private readonly double alternating;
    private readonly double ohms;

    public BenchMeter(MeterClass model, Random random)
    {
        (Model, this.random) = (model, random);
        (volts, alternating, ohms) = (random.Normal(), random.Normal(), random.Normal());
    }

    public MeterClass Model { get; }

    /// <summary>What it shows of a figure in base units.</summary>
    public Reading Show(Probe probe, Setup setup, double exact)
    {
        if (probe.Kind == ProbeKind.Ohm && exact > MostOhms)
        {
            return Overload(probe, setup);
        }
        var (error, standing) = probe.Kind switch
        {
            ProbeKind.Ohm => (Model.OhmError, ohms),
            ProbeKind.Dc or ProbeKind.Diode => (Model.DcError, volts),
            _ => (Model.AcError, alternating),
        };
        var off = exact * (1 + error * Math.Sqrt(0.5) * (standing + random.Normal()));
        var digit = MeterError.Count(probe, Math.Abs(off), Model);
        return new(probe, setup, MeterSaid.Value, Math.Round(off / digit) * digit, Model, "", Place.None);
    }

    public Reading Overload(Probe probe, Setup setup) => new(probe, setup, MeterSaid.Overload, double.NaN, Model, "", Place.None);
}
