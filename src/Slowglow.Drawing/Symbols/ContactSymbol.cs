using Slowglow.Sheets.Parts.Contact;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 07-02-01, drawn open, with the position in which it closes.</summary>
internal sealed class ContactSymbol(ContactPart part)
    : TwoEnded(
        part,
        $"{part.SwitchName}: {part.Position}",
        [Line.Of((0, -Reach), (0, -0.8)), Line.Of((0, Reach), (0, 0.8), (-0.7, -0.7)), new Ring(0, -0.8, 0.15, Fill.Ink)]
    );
