using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Formations;

/// <summary>A part that stands and carries a stage's current from its upper net to its lower one.</summary>
/// <param name="Top">Net at the end with the higher volts.</param>
/// <param name="IsTurned">True when its first pin is the lower one.</param>
/// <param name="Amperes">Through a resistor at the drawn potentials; 0 when unknown.</param>
internal sealed record Upright(Symbol Symbol, string Top, string Bottom, bool IsTurned, double Amperes)
{
    public bool IsActive => Symbol is ActiveSymbol;

    /// <summary>The grid, base or gate; null for a resistor.</summary>
    public string? Control => Symbol is ActiveSymbol ? Symbol.Pins[1].Net : null;

    public string End(bool top) => top ? Top : Bottom;
}
