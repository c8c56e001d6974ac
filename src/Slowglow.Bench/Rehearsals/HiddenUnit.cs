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
    private readonly Worlds worlds;
    private readonly BenchMeter meter;
    private readonly ReadingOffer offer;
    private readonly Dictionary<(Setup, Probe), Reading?> seen;
    private readonly List<Reading> readings = [];

    internal HiddenUnit(Worlds worlds, HiddenFault fault, string complaint, BenchMeter meter)
        : this(worlds, fault, complaint, meter, new ReadingOffer(worlds.Circuit.Sheet), []) { }

    private HiddenUnit(
        Worlds worlds,
        HiddenFault fault,
        string complaint,
        BenchMeter meter,
        ReadingOffer offer,
        Dictionary<(Setup, Probe), Reading?> seen
    )
    {
        (this.worlds, Fault, Complaint) = (worlds, fault, complaint);
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
    public HiddenUnit Again() => new(worlds, Fault, Complaint, meter, offer, seen);

    private Reading? Read(Probe probe, Setup setup)
    {
        var answer = worlds.Ask(setup, [Fault.Faults], [probe], meter.Model)[0][0];
        var isCold = probe.Kind is ProbeKind.Ohm or ProbeKind.Diode;
        return answer.Kind switch
        {
            AnswerKind.Value => meter.Show(probe, setup, answer.Value),
            AnswerKind.Overload => meter.Overload(probe, setup),
            AnswerKind.Floating => isCold ? meter.Overload(probe, setup) : meter.Show(probe, setup, 0),
            _ => null,
        };
    }
}
