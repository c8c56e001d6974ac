namespace Slowglow.Quantities;

/// <summary>A figure with its unit, in base units.</summary>
/// <param name="Value">Base units of <paramref name="Unit"/>; always finite.</param>
/// <param name="Unit"><see cref="Unit.None"/> when the text says none.</param>
/// <param name="Doubt">What is doubtful in the way it was written.</param>
public readonly record struct Quantity(double Value, Unit Unit, SpellingDoubt Doubt = SpellingDoubt.None)
{
    /// <summary>True when the figure can stand where <paramref name="wanted"/> is asked for.</summary>
    public bool Fits(Unit wanted) => Unit == wanted || Unit == Unit.None;
}
