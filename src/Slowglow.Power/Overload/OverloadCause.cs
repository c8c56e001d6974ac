using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Fuse;

namespace Slowglow.Power.Overload;

/// <summary>A fault of another part that overloads the one asked about.</summary>
/// <param name="Part">Designator of the culprit.</param>
/// <param name="Fault">"C1 short".</param>
/// <param name="What">"current in HT", "heat", "volts", "current".</param>
/// <param name="Unit">"A", "W" or "V".</param>
/// <param name="Value">What the part stands then.</param>
/// <param name="Healthy">What it stands in the healthy unit.</param>
/// <param name="Ratio">Over its rating; over what is healthy where it has none.</param>
/// <param name="Seconds">Until it is ruined, or a fuse has blown; infinite when it stands it; NaN when nothing can be said.</param>
/// <param name="ClearedBy">A fuse that opens sooner; null when none does.</param>
public sealed record OverloadCause(
    string Part,
    string Fault,
    string What,
    string Unit,
    double Value,
    double Healthy,
    double Ratio,
    double Seconds,
    string? ClearedBy
)
{
    /// <summary>True when it lasts so long only, and no fuse opens before.</summary>
    public bool IsUnprotected => double.IsFinite(Seconds) && ClearedBy is null;

    /// <summary>Whether the fuses save the part from what ruins it; empty when nothing does, and for a fuse.</summary>
    /// <param name="part">The one asked about.</param>
    /// <param name="causes">All of them.</param>
    public static string Protection(Part part, IReadOnlyList<OverloadCause> causes)
    {
        var ruin = causes.Where(c => double.IsFinite(c.Seconds)).ToArray();
        var open = ruin.Where(c => c.IsUnprotected).Select(c => c.Fault).ToArray();
        return ruin.Length == 0 || part is FusePart ? ""
            : open.Length == 0
                ? $"Fuses of the ratings drawn save {part.Designator} from all {ruin.Length} faults that would ruin it."
            : $"Fuses of the ratings drawn save {part.Designator} from {ruin.Length - open.Length} of {ruin.Length} faults that would ruin it; not from {string.Join(", ", open.Take(6))}.";
    }
}
