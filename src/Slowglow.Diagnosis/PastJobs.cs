namespace Slowglow.Diagnosis;

/// <summary>What past jobs on the same sheet came down to. Jobs whose cause nobody wrote down do not count.</summary>
public sealed record PastJobs(IReadOnlyList<FoundBefore> Found)
{
    /// <summary>Jobs whose cause is known.</summary>
    public int Jobs => Found.Sum(f => f.Jobs);

    /// <summary>Jobs in which this part was the cause.</summary>
    public int Of(string part) => Found.Where(f => f.Part == part).Sum(f => f.Jobs);
}
