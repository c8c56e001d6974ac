using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>What would tell the members of a group apart when no reading does. Common practice, no source.</summary>
internal static class Separation
{
    public static string Of(IReadOnlyList<string> group, IReadOnlyDictionary<string, Part> parts) =>
        group.Count < 2
            ? ""
            : $"No reading on offer separates {string.Join(", ", group)}. "
                + string.Join(" ", group.Take(4).Where(parts.ContainsKey).Select(g => How(parts[g])));

    private static string How(Part part) =>
        part switch
        {
            ValvePart => $"Put a known good valve in for {part.Designator}.",
            CapacitorPart => $"Lift a leg of {part.Designator} and measure it, or bridge it with a good one.",
            TransistorPart => $"Take {part.Designator} out and test it.",
            OpAmpPart => $"Change {part.Designator}, or lift its output.",
            WirePart or ContactPart => $"Bridge {part.Designator} with a lead.",
            _ => $"Lift a leg of {part.Designator} and measure it out of circuit.",
        };
}
