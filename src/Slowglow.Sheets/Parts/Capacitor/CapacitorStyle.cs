namespace Slowglow.Sheets.Parts.Capacitor;

public enum CapacitorStyle
{
    Unsaid,
    Electrolytic,
    Bipolar,
    Tantalum,
    Film,
    Paper,
    Ceramic,
    Mica,
}
