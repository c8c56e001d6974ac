using Slowglow.Diagnosis.Source;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Next;

/// <summary>
/// What a reading costs in minutes, and what its risk is worth in minutes. Common practice, no source: the figures are those a technician
/// would give, and a sheet's remarks on its points overrule them.
/// </summary>
internal sealed class ReadingCost(Sheet sheet, Setup current, bool generatorIsIn, double chanceOfOverload)
{
    private const double Touch = 1;
    private const double Thought = 0.7;
    private const double ChangeSetup = 3;
    private const double ChangeChannel = 1;
    private const double PullValve = 0.5;
    private const double LiftLeg = 8;
    private const double Reconnect = 4;

    /// <summary>Letting high-voltage reservoirs down through a resistor, and proving it.</summary>
    private const double Discharge = 1;
    private const double ReservoirVolts = 60;
    private const double Generator = 2;
    private const double HighVolts = 60;
    private const double HighVoltsRisk = 1;
    private const double MainsRisk = 4;
    private const double OverloadRisk = 5;

    private readonly bool reservoirs = sheet
        .Parts.OfType<CapacitorPart>()
        .Any(c => c is { Style: CapacitorStyle.Electrolytic, RatedVolts: > ReservoirVolts });

    private readonly HashSet<string> mains = MainsSide.Of(sheet);

    /// <summary>Minutes of work.</summary>
    public double Minutes(Probe probe, Setup setup) => AtThePoint(probe) + Changeover(probe, setup);

    /// <summary>
    /// Minutes as the choice reckons them: a changeover serves the readings after it too, so half of it is charged to this one, and every reading
    /// costs the time to note it and think.
    /// </summary>
    public double WeighedMinutes(Probe probe, Setup setup) => Thought + AtThePoint(probe) + Changeover(probe, setup) / 2;

    /// <summary>Minutes when the whole changeover is charged.</summary>
    public double FullMinutes(Probe probe, Setup setup) => Thought + Minutes(probe, setup);

    /// <summary>What readings cost once the bench stands in a setup.</summary>
    public ReadingCost After(Setup setup, bool withGenerator) => new(sheet, setup, withGenerator, chanceOfOverload);

    private double AtThePoint(Probe probe) => Touch + Math.Max(Access(probe.Red), Access(probe.Black));

    private double Changeover(Probe probe, Setup setup) => Change(setup) + (NeedsGenerator(probe) ? Generator : 0);

    /// <summary>Minutes that one would work longer to avoid the risk.</summary>
    public double RiskMinutes(Probe probe, Setup setup, double volts)
    {
        if (setup.PowerOff)
        {
            return 0;
        }
        var ours =
            IsMains(probe) ? MainsRisk
            : Math.Abs(volts) > HighVolts ? HighVoltsRisk
            : 0;
        return ours + (setup.LimiterWatts is null ? OverloadRisk * chanceOfOverload : 0);
    }

    /// <summary>In the trade's words.</summary>
    public string Risk(Probe probe, Setup setup, double volts) =>
        setup.PowerOff ? "power off: discharge the reservoirs and prove it first"
        : IsMains(probe) ? "live mains"
        : setup.LimiterWatts is null && chanceOfOverload > 0.3 ? "live: something may be shorted, use the lamp limiter"
        : Math.Abs(volts) > HighVolts ? "live HT"
        : "live, low volts";

    private bool IsMains(Probe probe) => probe.IsInlet || mains.Contains(probe.Red) || mains.Contains(probe.Black);

    private bool NeedsGenerator(Probe probe) => probe.Kind == ProbeKind.Level && !generatorIsIn;

    private double Change(Setup setup)
    {
        if (SetupKey.Of(setup) == SetupKey.Of(current))
        {
            return 0;
        }
        if (SetupKey.Of(setup with { Channel = current.Channel }) == SetupKey.Of(current))
        {
            return ChangeChannel;
        }
        var valves = setup.ValvesOut != current.ValvesOut ? PullValve * sheet.Parts.OfType<ValvePart>().Count() : 0;
        var pulled = PullValve * setup.Pulled.Except(current.Pulled).Union(current.Pulled.Except(setup.Pulled)).Count();
        var legs =
            LiftLeg * setup.Lifted.Except(current.Lifted).Count() + Reconnect * current.Lifted.Except(setup.Lifted).Count();
        var discharge = setup.PowerOff && !current.PowerOff && reservoirs ? Discharge : 0;
        return ChangeSetup + valves + pulled + legs + discharge;
    }

    private double Access(string net)
    {
        var remark = sheet.Points.FirstOrDefault(p =>
            p.AccessMinutes is not null && (p.Where == net || sheet.Nets.Find(p.Where) == net)
        );
        return remark?.AccessMinutes ?? 0;
    }
}
