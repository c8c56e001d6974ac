namespace Slowglow.Bench.Rehearsals;

/// <summary>All cases of a rehearsal and what they come to.</summary>
/// <param name="Request">What was asked for.</param>
/// <param name="Cases">Every unit, in order; fewer than asked for when no draw gave a complaint.</param>
public sealed record RehearsalReport(RehearsalRequest Request, IReadOnlyList<RehearsalCase> Cases)
{
    /// <summary>Units with one fault.</summary>
    public IReadOnlyList<RehearsalCase> Singles { get; } = Of(Cases, HiddenKind.Single);
    public IReadOnlyList<RehearsalCase> Doubles { get; } = Of(Cases, HiddenKind.Double);
    public IReadOnlyList<RehearsalCase> WrongValues { get; } = Of(Cases, HiddenKind.WrongValue);
    public IReadOnlyList<RehearsalCase> Bridges { get; } = Of(Cases, HiddenKind.Bridged);

    /// <summary>Share of single faults where the true part came first; NaN without cases.</summary>
    public double First => Share(Singles, c => c.Rank == 1);

    /// <summary>The same for the first three.</summary>
    public double FirstThree => Share(Singles, c => c.Rank <= 3);

    /// <summary>Share of the right first suspects that are one part alone.</summary>
    public double Alone => Share([.. Singles.Where(c => c.Rank == 1)], c => c.FirstGroup == 1);

    /// <summary>Mean number of parts in a right first suspect.</summary>
    public double Group => Mean([.. Singles.Where(c => c.Rank == 1)], c => c.FirstGroup);

    /// <summary>Share of single faults where the certainty asked for was reached.</summary>
    public double Certain => Share(Singles, c => c.IsCertain);

    /// <summary>Share of those in which that certainty was right.</summary>
    public double CertainAndRight => Share([.. Singles.Where(c => c.IsCertain)], c => c.Reached!.Value.IsRight);

    /// <summary>Mean readings of single faults until that certainty, those given up with all they took.</summary>
    public double Readings => Mean(Singles, c => c.Reached?.Readings ?? c.Steps.Count);

    /// <summary>Mean minutes of single faults until that certainty.</summary>
    public double Minutes => Mean(Singles, c => c.Reached?.Minutes ?? c.Minutes);

    /// <summary>Mean readings of single faults until nothing more was proposed.</summary>
    public double ReadingsToTheEnd => Mean(Singles, c => c.Steps.Count);

    /// <summary>Of all that was said on the way, single faults.</summary>
    public Reliability OnTheWay => Reliability.Of([.. Singles.SelectMany(c => c.Statements)]);

    /// <summary>Of what was said last, single faults.</summary>
    public Reliability AtTheEnd => Reliability.Of([.. Singles.Select(c => c.Statements[^1])]);

    /// <summary>Share of cases without a claim above 70 % for a single part that is not at fault.</summary>
    public static double WithoutOverclaim(IReadOnlyList<RehearsalCase> cases) => Share(cases, c => !c.IsOverclaimed);

    private static List<RehearsalCase> Of(IReadOnlyList<RehearsalCase> cases, HiddenKind kind) =>
        [.. cases.Where(c => c.Hidden.Kind == kind)];

    private static double Share(IReadOnlyList<RehearsalCase> cases, Func<RehearsalCase, bool> counts) =>
        Mean(cases, c => counts(c) ? 1 : 0);

    private static double Mean(IReadOnlyList<RehearsalCase> cases, Func<RehearsalCase, double> of) =>
        cases.Count == 0 ? double.NaN : cases.Average(of);
}
