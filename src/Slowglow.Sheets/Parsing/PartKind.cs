using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parsing;

/// <summary>How one kind of part is read. Each kind's folder holds one.</summary>
internal abstract class PartKind
{
    /// <summary>What a technician calls it.</summary>
    internal abstract string Name { get; }

    /// <summary>Words that begin a WHAT and settle the kind; they win over the letter.</summary>
    internal abstract IReadOnlyList<string> Words { get; }

    /// <summary>Designator letters of the kind.</summary>
    internal abstract IReadOnlyList<string> Letters { get; }

    /// <summary>Kinds of type numbers that make a part of this kind.</summary>
    internal virtual IReadOnlyList<DeviceKind> Devices => [];

    /// <summary>Understands the entry; null after an error that leaves no part.</summary>
    internal abstract PartPlan? Plan(PartEntry entry, SheetContext context);
}
