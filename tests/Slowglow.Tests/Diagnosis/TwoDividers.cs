using Slowglow.Circuits;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Diagnosis;

/// <summary>
/// A network small enough to be worked by hand, in place of the solver: 100 V (3 %) through F1 to HT; R1 and R2 divide it to A (channel
/// one), R3 and R4 to B (channel two); R5 and R6 side by side feed C, R7 loads it; R8 feeds D over R9.
/// </summary>
internal sealed class TwoDividers : IWorldSource
{
    private static readonly (string Name, double Ohms, string A, string B)[] Resistors =
    [
        ("R1", 100e3, "HT", "A"),
        ("R2", 100e3, "A", "GND"),
        ("R3", 100e3, "HT", "B"),
        ("R4", 100e3, "B", "GND"),
        ("R5", 20e3, "HT", "C"),
        ("R6", 20e3, "HT", "C"),
        ("R7", 10e3, "C", "GND"),
        ("R8", 10, "HT", "D"),
        ("R9", 10e3, "D", "GND"),
    ];

    private static readonly string[] Nets = ["SRC", "HT", "A", "B", "C", "D"];
    private const double SourceVolts = 100;
    private const double FuseOhms = 0.1;

    public TwoDividers()
    {
        Parameters = [new("mains", "mains volts", 0.03), .. Resistors.Select(r => new RandomParameter(r.Name, "value", 0.02))];
        Faults = [.. Resistors.SelectMany(r => FaultsOf(r.Name)), new Fault("F1", "", FailureMode.Open)];
        Sheet = MakeSheet();
    }

    public Sheet Sheet { get; }
    public IReadOnlyList<RandomParameter> Parameters { get; }
    public IReadOnlyList<Fault> Faults { get; }

    public IReadOnlyList<Answer[]> Ask(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        IReadOnlyList<Probe> probes,
        MeterClass meter,
        IProgress<double>? progress,
        CancellationToken cancel
    ) => [.. faultSets.Select(f => probes.Select(p => AnswerOf(setup, f, p)).ToArray())];

    public IReadOnlyList<SignalReport> Signal(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        string? channel,
        IProgress<double>? progress,
        CancellationToken cancel
    ) =>
        [
            .. faultSets.Select(f =>
            {
                var volts = Solve(f, new double[Parameters.Count])[channel == "two" ? "B" : "A"];
                return new SignalReport(true, volts / 50, volts < 30 ? 0.4 : 0.02, volts / 50, 1e-4, 0);
            }),
        ];

    public IReadOnlyList<PartStress> Stress(Setup setup, IReadOnlyList<Fault> faults)
    {
        var volts = Solve(faults, new double[Parameters.Count]);
        var amps = (SourceVolts - volts["HT"]) / FuseOhms;
        return [new("F1", 0, double.NaN, 0, double.NaN, amps, amps / 0.5), .. Resistors.Select(r => StressOf(r, volts))];
    }

    /// <summary>What a meter without any error would show on a unit with this fault and nominal parts.</summary>
    public double Exact(string where, params Fault[] faults) => Solve(faults, new double[Parameters.Count])[where];

    /// <summary>What an ideal ohmmeter across a part would show.</summary>
    public double ExactOhms(string part, params Fault[] faults) =>
        OhmsBetween(faults, Across(part), new double[Parameters.Count]);

    public static Probe Dc(string net) => new(net, net, NetTable.Ground, ProbeKind.Dc);

    public static Probe Across(string part)
    {
        var r = Resistors.First(x => x.Name == part);
        return new(part, r.A, r.B, ProbeKind.Ohm);
    }

    private static PartStress StressOf((string Name, double Ohms, string A, string B) r, Dictionary<string, double> volts)
    {
        var v = volts[r.A] - (r.B == "GND" ? 0 : volts[r.B]);
        return new(r.Name, v * v / r.Ohms, v * v / r.Ohms / 2, v, double.NaN, v / r.Ohms, double.NaN);
    }

    private static IEnumerable<Fault> FaultsOf(string part) =>
        [
            new(part, "", FailureMode.Open),
            new(part, "", FailureMode.Short),
            .. new[] { 1.5, 2, 3, 6, 0.5 }.Select(s => new Fault(part, "", FailureMode.Drifted, s)),
        ];

    private Answer AnswerOf(Setup setup, IReadOnlyList<Fault> faults, Probe probe)
    {
        if (setup.PowerOff != (probe.Kind == ProbeKind.Ohm) || probe.Kind is not (ProbeKind.Dc or ProbeKind.Ohm or ProbeKind.Ac))
        {
            return Answer.None(AnswerKind.NotApplicable);
        }
        if (probe.Kind == ProbeKind.Ac && !probe.IsInlet)
        {
            return Answer.None(AnswerKind.NotApplicable);
        }
        var nominal = Figure(faults, probe, new double[Parameters.Count]);
        if (nominal > 40e6)
        {
            return Answer.None(AnswerKind.Overload);
        }
        var spread = new double[Parameters.Count];
        for (var k = 0; k < spread.Length; k++)
        {
            var shift = new double[spread.Length];
            shift[k] = 0.1;
            spread[k] = (Figure(faults, probe, shift) - nominal) * 10;
        }
        return new(AnswerKind.Value, nominal, spread);
    }

    private double Figure(IReadOnlyList<Fault> faults, Probe probe, double[] deviations)
    {
        if (probe.IsInlet)
        {
            return (SourceVolts - Solve(faults, deviations)["HT"]) / FuseOhms;
        }
        if (probe.Kind == ProbeKind.Ohm)
        {
            return OhmsBetween(faults, probe, deviations);
        }
        var volts = Solve(faults, deviations);
        return volts[probe.Red] - (probe.Black == NetTable.Ground ? 0 : volts[probe.Black]);
    }

    private Dictionary<string, double> Solve(IReadOnlyList<Fault> faults, double[] deviations)
    {
        var (g, i) = Matrix(faults, deviations);
        g[0, 0] += 1e6;
        i[0] += 1e6 * SourceVolts * (1 + deviations[0] * Parameters[0].Sigma);
        return Dense(g, i);
    }

    private double OhmsBetween(IReadOnlyList<Fault> faults, Probe probe, double[] deviations)
    {
        var (g, i) = Matrix(faults, deviations);
        i[Array.IndexOf(Nets, probe.Red)] += 1;
        if (probe.Black != NetTable.Ground)
        {
            i[Array.IndexOf(Nets, probe.Black)] -= 1;
        }
        var volts = Dense(g, i);
        return volts[probe.Red] - (probe.Black == NetTable.Ground ? 0 : volts[probe.Black]);
    }

    private (double[,] G, double[] I) Matrix(IReadOnlyList<Fault> faults, double[] deviations)
    {
        var g = new double[Nets.Length, Nets.Length];
        for (var n = 0; n < Nets.Length; n++)
        {
            g[n, n] = 1e-12;
        }
        Add(g, "SRC", "HT", faults.Any(f => f.Part == "F1") ? 1e-12 : 1 / FuseOhms);
        for (var r = 0; r < Resistors.Length; r++)
        {
            var (name, ohms, a, b) = Resistors[r];
            var value = ohms * (1 + deviations[r + 1] * Parameters[r + 1].Sigma);
            Add(g, a, b, Conductance(value, faults.FirstOrDefault(f => f.Part == name)));
        }
        return (g, new double[Nets.Length]);
    }

    private static double Conductance(double ohms, Fault? fault) =>
        fault?.Mode switch
        {
            null => 1 / ohms,
            FailureMode.Open => 1e-12,
            FailureMode.Short => 10,
            _ => 1 / (ohms * fault.Severity),
        };

    private static void Add(double[,] g, string a, string b, double siemens)
    {
        var (i, j) = (Array.IndexOf(Nets, a), Array.IndexOf(Nets, b));
        if (i >= 0)
        {
            g[i, i] += siemens;
        }
        if (j >= 0)
        {
            g[j, j] += siemens;
        }
        if (i >= 0 && j >= 0)
        {
            g[i, j] -= siemens;
            g[j, i] -= siemens;
        }
    }

    private static Dictionary<string, double> Dense(double[,] g, double[] i)
    {
        for (var k = 0; k < i.Length; k++)
        {
            for (var r = k + 1; r < i.Length; r++)
            {
                var factor = g[r, k] / g[k, k];
                for (var c = k; c < i.Length; c++)
                {
                    g[r, c] -= factor * g[k, c];
                }
                i[r] -= factor * i[k];
            }
        }
        for (var k = i.Length - 1; k >= 0; k--)
        {
            for (var c = k + 1; c < i.Length; c++)
            {
                i[k] -= g[k, c] * i[c];
            }
            i[k] /= g[k, k];
        }
        return Nets.Select((n, k) => (n, i[k])).ToDictionary(p => p.n, p => p.Item2);
    }

    private static Sheet MakeSheet()
    {
        IEnumerable<Part> parts = Resistors.Select(r => new ResistorPart
        {
            Designator = r.Name,
            Description = r.Name,
            Ohms = r.Ohms,
            Tolerance = 0.05,
            Pins = [new("1", "", r.A), new("2", "", r.B)],
        });
        var fuse = new FusePart
        {
            Designator = "F1",
            Description = "500 mA",
            RatedAmps = 0.5,
            Ohms = FuseOhms,
            Pins = [new("1", "", "SRC"), new("2", "", "HT")],
        };
        string[] nets = [NetTable.Ground, .. Nets];
        return new Sheet
        {
            Unit = "Two dividers",
            Mains = new(230, 50, 0.06),
            Switches = [],
            Controls = [],
            Parts = [fuse, .. parts],
            Signals =
            [
                new("one", "A", "A", 1e3, 1, double.PositiveInfinity),
                new("two", "B", "B", 1e3, 1, double.PositiveInfinity),
            ],
            Nets = new(nets, nets.ToDictionary(n => n)),
            Points = [],
            Assumptions = [],
        };
    }
}
