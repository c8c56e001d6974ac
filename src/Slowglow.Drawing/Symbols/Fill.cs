namespace Slowglow.Drawing.Symbols;

internal enum Fill
{
    None,
    Paper,
    Ink,
}
