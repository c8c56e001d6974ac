using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>How every hypothesis sounds on a channel, asked for once and kept. The customer's condition: full mains, nothing pulled.</summary>
internal sealed class SymptomStore(IWorldSource source, HypothesisList hypotheses)
{
    private const double BassHertz = 80;
    private const double TrebleHertz = 8000;

    /// <summary>Hum this far below the output at drive is not heard: 70 dB. Common practice, no source.</summary>
    private const double Inaudible = 3e-4;

    private readonly Dictionary<(string Channel, string Condition), Symptoms?[]> known = [];
    private readonly Dictionary<(string Channel, string Condition), (SignalReport Report, double[] Response)> healthy = [];

    public Symptoms Of(string channel, Heard word, int hypothesis) => known[(channel, word.Condition)]![hypothesis]!.Value;

    /// <summary>Solves what is missing.</summary>
    public void Ensure(string channel, Heard word, IEnumerable<int> wanted, IProgress<double>? progress, CancellationToken cancel)
    {
        var key = (channel, word.Condition);
        if (!known.TryGetValue(key, out var rows))
        {
            rows = new Symptoms?[hypotheses.Count];
            known.Add(key, rows);
        }
        if (rows.Length < hypotheses.Count)
        {
            Array.Resize(ref rows, hypotheses.Count);
            known[key] = rows;
        }
        int[] missing = [.. wanted.Append(0).Where(h => rows[h] is null).Distinct().Order()];
        if (missing.Length == 0)
        {
            return;
        }
        var setup = SetupOf(channel, word);
        var sets = missing.Select(hypotheses.FaultsOf).ToList();
        var reports = source.Signal(setup, sets, channel, progress, cancel);
        var responses = source.Ask(setup, sets, ResponseProbes(channel), MeterClass.Handheld, null, cancel);
        if (!healthy.ContainsKey(key))
        {
            healthy[key] = (reports[0], Figures(responses[0]));
        }
        for (var i = 0; i < missing.Length; i++)
        {
            rows[missing[i]] = Compare(healthy[key], reports[i], Figures(responses[i]));
        }
    }

    /// <summary>The customer's setting of the controls.</summary>
    public Setup SetupOf(string channel, Heard word)
    {
        var controls = word.VolumeDown ? VolumeControls() : [];
        foreach (var (name, rotation) in word.Controls)
        {
            controls[name] = rotation;
        }
        return Setup.Default with { Channel = channel, Controls = controls };
    }

    private Dictionary<string, double> VolumeControls() =>
        source.Sheet.Controls.Where(c => IsVolume(c.Name)).ToDictionary(c => c.Name, _ => 0.0);

    private static bool IsVolume(string name) =>
        new[] { "VOL", "GAIN", "LEVEL", "MASTER", "FADER" }.Any(w => name.Contains(w, StringComparison.OrdinalIgnoreCase));

    private Probe[] ResponseProbes(string channel)
    {
        var path = source.Sheet.Signals.First(s => s.Name == channel);
        return
        [
            .. new[] { BassHertz, 1000, TrebleHertz }.Select(f => new Probe(
                path.Out,
                path.Out,
                NetTable.Ground,
                ProbeKind.Level,
                f
            )),
        ];
    }

    private static double[] Figures(Answer[] answers) => [.. answers.Select(a => a.HasValue ? Math.Abs(a.Value) : double.NaN)];

    private static Symptoms Compare((SignalReport Report, double[] Response) good, SignalReport bad, double[] response)
    {
        var drop = Db(good.Report.LevelVolts, bad.LevelVolts);
        var mid = Db(good.Response[1], response[1]);
        var audible = Math.Max(Math.Abs(good.Report.HumVolts), Inaudible * Math.Abs(good.Report.OutputAtDrive));
        return new(
            bad.Settled && good.Report.Settled,
            drop,
            Db(good.Response[0], response[0]) - mid,
            Db(good.Response[2], response[2]) - mid,
            bad.DistortionAtDrive,
            good.Report.DistortionAtDrive,
            20 * Math.Log10((Math.Abs(bad.HumVolts) + audible) / (2 * audible)),
            Math.Abs(bad.OffsetVolts - good.Report.OffsetVolts)
        );
    }

    /// <summary>Decibels lost; 120 at most.</summary>
    private static double Db(double before, double after) =>
        20 * Math.Log10(Math.Max(Math.Abs(before), 1e-9) / Math.Max(Math.Abs(after), 1e-6 * Math.Abs(before) + 1e-12));
}
