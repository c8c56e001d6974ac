namespace Slowglow.Sheets.Parsing;

/// <summary>A pin before its net is known.</summary>
internal sealed class PinPlan(string number, string electrode = "")
{
    internal string Number { get; } = number;
    internal string Electrode { get; } = electrode;

    /// <summary>Where the sheet says this pin goes; null when only other parts may mention it.</summary>
    internal Word? End { get; set; }
}
