using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// A unit with a fault that nobody at the bench knows. It can be listened to (the complaint) and measured; every reading costs its minutes.
/// The same reading taken twice shows the same. Not for use from several threads.
/// </summary>
public sealed class HiddenUnit
{
    /// <summary>Ohms of a meter that is already in the circuit.</summary>
    private const double NoLoad = 1e12;

    private readonly Specimen specimen;
    private readonly BenchMeter meter;
    private readonly ReadingOffer offer;
    private readonly Dictionary<(Setup, Probe), Reading?> seen;
    private readonly List<Reading> readings = [];

    internal HiddenUnit(Specimen specimen, HiddenFault fault, string complaint, BenchMeter meter)
        : this(specimen, fault, complaint, meter, new ReadingOffer(specimen.Worlds.Circuit.Sheet), []) { }

    private HiddenUnit(
        Specimen specimen,
        HiddenFault fault,
        string complaint,
        BenchMeter meter,
        ReadingOffer offer,
        Dictionary<(Setup, Probe), Reading?> seen
    )
    {
        (this.specimen, Fault, Complaint) = (specimen, fault, complaint);
        (this.meter, this.offer, this.seen) = (meter, offer, seen);
    }

    /// <summary>What the customer says.</summary>
    public string Complaint { get; }

    /// <summary>What is wrong. Not to be looked at before the end.</summary>
    public HiddenFault Fault { get; }

    /// <summary>Taken so far, in order.</summary>
    public IReadOnlyList<Reading> Readings => readings;

    /// <summary>Spent so far.</summary>
    public double Minutes { get; private set; }

    /// <summary>What the meter shows; null when it never comes to rest. Either way the minutes are spent.</summary>
    public Reading? Measure(Probe probe, Setup setup)
    {
        Minutes += offer.Minutes(probe, setup, readings.LastOrDefault());
        if (!seen.TryGetValue((setup, probe), out var reading))
        {
            seen.Add((setup, probe), reading = Read(probe, setup));
        }
        if (reading is not null)
        {
            readings.Add(reading);
        }
        return reading;
    }

    /// <summary>The same unit on the bench again with the clock at zero: for another to try, or to see what the program would have done.</summary>
    public HiddenUnit Again() => new(specimen, Fault, Complaint, meter, offer, seen);

    private Reading? Read(Probe probe, Setup setup)
    {
        var answer = Ask(specimen.Worlds, probe, setup, meter.Model);
        return answer.Kind switch
        {
            AnswerKind.Value => meter.Show(probe, setup, answer.Value),
            AnswerKind.Overload => meter.Overload(probe, setup),
            AnswerKind.Floating => HeldByTheMeter(probe, setup),
            _ => null,
        };
    }

    /// <summary>A net that nothing holds goes where the meter's own resistance lets it go.</summary>
    private Reading? HeldByTheMeter(Probe probe, Setup setup)
    {
        if (probe.Kind is ProbeKind.Ohm or ProbeKind.Diode)
        {
            return meter.Overload(probe, setup);
        }
        var measured = probe.Kind == ProbeKind.Dc ? specimen.WithMeter(probe, meter.Model) : null;
        var answer = measured is null
            ? Answer.None(AnswerKind.Floating)
            : Ask(measured.Worlds, probe, setup, meter.Model with { InputOhms = NoLoad });
        return meter.Show(probe, setup, answer.HasValue ? answer.Value : 0);
    }

    private Answer Ask(Worlds worlds, Probe probe, Setup setup, MeterClass model) =>
        worlds.Ask(setup, [Fault.Faults], [probe], model)[0][0];
}
