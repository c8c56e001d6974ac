using Slowglow.Bench.Questions;

namespace Slowglow.Bench.Rehearsals;

/// <summary>Hides faults in units of one sheet and sees how they are found.</summary>
public sealed class RehearseUnit(BenchUnit unit)
{
    /// <summary>The share of the progress that the first diagnosis is worth.</summary>
    private const double Start = 0.1;

    /// <summary>One case after the other; the same request gives the same cases, and another strategy gets the same units.</summary>
    /// <param name="told">Called after every case.</param>
    public RehearsalReport Run(
        RehearsalRequest request,
        IProgress<double>? progress = null,
        Action<RehearsalCase>? told = null,
        CancellationToken cancel = default
    )
    {
        var units = new HiddenUnits(unit, request.Seed, null, cancel);
        var runner = new CaseRunner(unit, request.Rules);
        HiddenKind[] kinds =
        [
            .. Enumerable.Repeat(HiddenKind.Single, request.Cases),
            .. Enumerable.Repeat(HiddenKind.Double, request.Doubles),
            .. Enumerable.Repeat(HiddenKind.WrongValue, request.WrongValues),
            .. Enumerable.Repeat(HiddenKind.Bridged, request.Bridges),
        ];
        var cases = new List<RehearsalCase>();
        for (var i = 0; i < kinds.Length; i++)
        {
            cancel.ThrowIfCancellationRequested();
            progress?.Report(Start + ((1 - Start) * i / kinds.Length));
            if (units.Hide(i, kinds[i], request.Draw, cancel) is { } hidden)
            {
                var done = runner.Run(hidden, request.By, i, cancel);
                told?.Invoke(done);
                cases.Add(done);
            }
        }
        return new(request, cases);
    }

    /// <summary>The way the program would have taken with a unit, from the complaint on.</summary>
    public RehearsalCase ProgramsWay(HiddenUnit hidden, RehearsalRules? rules = null, CancellationToken cancel = default) =>
        new CaseRunner(unit, rules ?? new()).Run(hidden.Again(), Strategy.Program, 0, cancel);
}
