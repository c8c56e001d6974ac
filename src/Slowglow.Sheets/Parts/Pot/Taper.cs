namespace Slowglow.Sheets.Parts.Pot;

public enum Taper
{
    Lin,
    Log,
    Antilog,
}
