namespace Slowglow.Power.Rewinding;

/// <summary>One line of the form on which a wound part is checked.</summary>
/// <param name="What">"P to HT, nothing drawn", "ohms of P at 20 degrees".</param>
/// <param name="Line">How a line begins that says what was measured: "P/HT", "P", "off load".</param>
/// <param name="Expected">By the specification.</param>
/// <param name="Low">Least that passes.</param>
/// <param name="High">Most that passes.</param>
/// <param name="Unit">"", "ohm", "A" or "V".</param>
/// <param name="Measured">NaN = not entered yet.</param>
public sealed record WoundCheckRow(
    string What,
    string Line,
    double Expected,
    double Low,
    double High,
    string Unit,
    double Measured = double.NaN
)
{
    /// <summary>Null until something was entered.</summary>
    public bool? Passes => double.IsNaN(Measured) ? null : Measured >= Low && Measured <= High;
}
