using Slowglow.Quantities;

namespace Slowglow.Sheets.Parsing;

/// <summary>Warns of spellings that can be read in two ways.</summary>
internal static class Doubts
{
    internal static void Report(Word word, Quantity quantity, string subject, FindingList findings)
    {
        switch (quantity.Doubt)
        {
            case SpellingDoubt.OldMicrofarad:
                findings.Warning(
                    word.Place,
                    $"{subject}: '{word.Text}' is read as microfarads, as on old drawings",
                    "write u, uF or mfd",
                    subject
                );
                break;
            case SpellingDoubt.Millifarad:
                findings.Warning(
                    word.Place,
                    $"{subject}: '{word.Text}' is read as millifarads",
                    "write u, uF or mfd if the drawing means microfarads",
                    subject
                );
                break;
            case SpellingDoubt.ThousandsComma:
                findings.Warning(
                    word.Place,
                    $"{subject}: the comma in '{word.Text}' is read as one between thousands",
                    "write 4700 or 4k7, or 4.7 if it is a decimal comma",
                    subject
                );
                break;
        }
    }
}
