using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>The nets along a signal path at which a level tells one stage from the next.</summary>
internal static class SignalChain
{
    /// <summary>A net belongs to the path when the way through it is at most this many steps longer than the shortest.</summary>
    private const int Detour = 1;

    /// <summary>Canonical nets from input to output: the input, anodes, collectors, op-amp outputs, wipers of level controls, the output.</summary>
    public static IReadOnlyList<string> Of(Sheet sheet, SignalPath path, Setup setup)
    {
        var steps = ForwardSteps.From(SignalSteps.Of(sheet, setup), path.In);
        var reached = Reached(steps, path.In);
        if (!reached.TryGetValue(path.Out, out var shortest))
        {
            return [path.In, path.Out];
        }

        var entering = steps.ToLookup(s => s.To, s => s.From);
        var left = ForwardSteps.Distances(path.Out, n => entering[n]);
        var joins = NetJoins.In(setup, sheet);
        var telling = sheet
            .Parts.Where(p => p is not PotPart pot || joins.IsGround(pot.Pins[2].Net))
            .SelectMany(TellingNets)
            .ToHashSet();
        var between = reached
            .Where(n => telling.Contains(n.Key) && n.Key != path.In && n.Key != path.Out)
            .Where(n => left.TryGetValue(n.Key, out var rest) && n.Value + rest <= shortest + Detour)
            .OrderBy(n => n.Value)
            .Select(n => n.Key);
        return [path.In, .. between, path.Out];
    }

    private static Dictionary<string, int> Reached(IReadOnlyList<SignalStep> steps, string input)
    {
        var leaving = steps.ToLookup(s => s.From, s => s.To);
        return ForwardSteps.Distances(input, n => leaving[n]);
    }

    private static IEnumerable<string> TellingNets(Part part) =>
        part switch
        {
            ValvePart => part.Pins.Where(p => p.Electrode.StartsWith('a')).Select(p => p.Net),
            OpAmpPart => part.Pins.Where(p => p.Electrode.StartsWith("out", StringComparison.Ordinal)).Select(p => p.Net),
            PotPart { IsTrimmer: false } => part.Pins.Skip(1).Take(1).Select(p => p.Net),
            TransistorPart => part.Pins.Where(p => p.Electrode is "c" or "d").Select(p => p.Net),
            _ => [],
        };
}
