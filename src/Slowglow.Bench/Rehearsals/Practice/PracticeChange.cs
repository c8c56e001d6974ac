namespace Slowglow.Bench.Rehearsals.Practice;

/// <summary>A part that the learner changed.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Cured">It was the one.</param>
/// <param name="BlowsAgain">It was a fuse that something else had blown.</param>
public sealed record PracticeChange(string Part, bool Cured, bool BlowsAgain, double Minutes) : PracticeStep(Minutes);
