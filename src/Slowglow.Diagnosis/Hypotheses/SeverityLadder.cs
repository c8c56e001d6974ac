using Slowglow.Circuits;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>Finds the neighbours of soft faults: the same part, place and mode at the next severity.</summary>
internal static class SeverityLadder
{
    /// <summary>For each fault the index of the next milder and the next worse one in the list, or -1.</summary>
    public static (int Milder, int Worse)[] Of(IReadOnlyList<Fault> faults)
    {
        var neighbours = Enumerable.Repeat((Milder: -1, Worse: -1), faults.Count).ToArray();
        var ladders = Enumerable
            .Range(0, faults.Count)
            .Where(i => IsSoft(faults[i]))
            .GroupBy(i => (faults[i].Part, faults[i].Where, faults[i].Mode, faults[i].Severity >= 1));
        foreach (var ladder in ladders)
        {
            int[] rungs = [.. ladder.OrderBy(i => Badness(faults[i]))];
            for (var r = 0; r < rungs.Length; r++)
            {
                neighbours[rungs[r]] = (r > 0 ? rungs[r - 1] : -1, r + 1 < rungs.Length ? rungs[r + 1] : -1);
            }
        }
        return neighbours;
    }

    public static bool IsSoft(Fault fault) =>
        fault.Mode
            is FailureMode.Leaky
                or FailureMode.Drifted
                or FailureMode.WrongValue
                or FailureMode.LowEmission
                or FailureMode.DriedOut
                or FailureMode.BadContact
                or FailureMode.Gassy
        && fault.Severity > 0;

    /// <summary>Larger for a worse fault.</summary>
    private static double Badness(Fault fault) =>
        fault.Mode switch
        {
            FailureMode.Drifted or FailureMode.WrongValue => Math.Abs(Math.Log(fault.Severity)),
            FailureMode.BadContact or FailureMode.Gassy => Math.Log(fault.Severity),
            _ => -Math.Log(fault.Severity),
        };
}
