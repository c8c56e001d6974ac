using Slowglow.Quantities;

namespace Slowglow.Bench.Sums;

/// <summary>A figure or word that a sum asks for.</summary>
/// <param name="Key">Short name, as in a link.</param>
/// <param name="Unit">What is read when no unit is typed; <see cref="Unit.None"/> for a word.</param>
/// <param name="Initial">What stands there at first.</param>
public sealed record SumField(string Key, string Label, Unit Unit, string Initial)
{
    /// <summary>Words to choose from; empty for a figure or free text.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>True where leaving it empty means "none".</summary>
    public bool MayBeEmpty { get; init; }

    /// <summary>True where it is text, not a figure.</summary>
    public bool IsWord => Unit == Unit.None;
}
