using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Next;

/// <summary>The setups on offer: those of the job, the plain one, power off, valves out, and the other channels.</summary>
internal sealed class Benches(Knowledge knowledge)
{
    private static readonly Setup ValvesOut = new() { Name = "valves out", ValvesOut = true };

    /// <summary>Every setup on offer, the default first, each once.</summary>
    public IReadOnlyList<Setup> On(IReadOnlyList<Setup> offered)
    {
        var sheet = knowledge.Source.Sheet;
        List<Setup> all = [.. offered, Setup.Default, Setup.Cold];
        if (sheet.Parts.OfType<ValvePart>().Any())
        {
            all.Add(ValvesOut);
        }
        all.AddRange(sheet.Signals.Skip(1).Select(s => Setup.Default with { Name = s.Name, Channel = s.Name }));
        return [.. all.DistinctBy(SetupKey.Of)];
    }

    /// <summary>
    /// Blocks with the answers of the plausible hypotheses. The first powered setup is solved for all of them, the others for the likelier ones.
    /// </summary>
    public IReadOnlyList<Bench> Solve(
        IReadOnlyList<Setup> setups,
        int[] plausible,
        int[] likely,
        IProgress<double>? progress,
        CancellationToken cancel
    )
    {
        var benches = new List<Bench>();
        foreach (var setup in setups)
        {
            var block = knowledge.BlockOf(setup);
            block.Ensure((benches.Count == 0 ? plausible : likely).Append(0), progress, cancel);
            benches.Add(new(setup, block));
        }
        return benches;
    }
}
