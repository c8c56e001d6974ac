namespace Slowglow.Sheets.Parts.Resistor;

public enum ResistorStyle
{
    /// <summary>Not said on the drawing; treated as film.</summary>
    Unsaid,
    Film,
    Carbon,
    Wirewound,
}
