namespace Slowglow.Workshop.Timeline;

/// <summary>A drawn sheet was laid beside the job.</summary>
public sealed class SheetAttached : EntryWith<AttachedSheet>
{
    /// <inheritdoc/>
    public override bool IsEvidence => true;
}
