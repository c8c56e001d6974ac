using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parsing;

/// <summary>What the readers of single parts may know of the rest of the sheet.</summary>
internal sealed class SheetContext
{
    private readonly List<Action> afterwards = [];

    internal required FindingList Findings { get; init; }
    internal required DeviceLibrary Devices { get; init; }

    /// <summary>Types that the sheet describes, but so badly that they have been reported already.</summary>
    internal required IReadOnlySet<string> BrokenTypes { get; init; }
    internal List<Assumption> Assumptions { get; } = [];
    internal Mains Mains { get; set; } = new(230, 50, 0.06);
    internal List<Switch> Switches { get; } = [];
    internal List<Control> Controls { get; } = [];

    /// <summary>Every designator of the sheet, broken parts too.</summary>
    internal HashSet<string> Designators { get; } = [];

    /// <summary>Controls that a pot is tied to.</summary>
    internal HashSet<string> ControlsUsed { get; } = [];

    internal void Assume(string subject, string what, string figure, string reason) =>
        Assumptions.Add(new Assumption(subject, what, figure, reason));

    /// <summary>Checks that need all parts to be known.</summary>
    internal void Afterwards(Action check) => afterwards.Add(check);

    internal void RunAfterwards() => afterwards.ForEach(check => check());
}
