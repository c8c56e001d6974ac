namespace Slowglow.Bench.Rehearsals.Practice;

/// <summary>Something the learner did.</summary>
/// <param name="Minutes">What it cost, at least 0.</param>
public abstract record PracticeStep(double Minutes);
