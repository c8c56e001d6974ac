namespace Slowglow.Bench.Writing;

/// <summary>The sheet of a job with everything it was before.</summary>
/// <param name="Unit">Maker and model.</param>
/// <param name="Versions">The oldest first; empty where nothing has been drawn yet.</param>
public sealed record JobSheet(int Number, string Unit, IReadOnlyList<SheetVersion> Versions)
{
    /// <summary>The sheet that the job is worked with; null where there is none.</summary>
    public SheetVersion? Newest => Versions.Count == 0 ? null : Versions[^1];
}
