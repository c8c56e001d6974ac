using Slowglow.Quantities;

namespace Slowglow.Sheets.Parsing;

/// <summary>Notes values that no preferred series holds: old parts have them, and so have slips of the pen.</summary>
internal static class Preferred
{
    internal static void Check(Figure value, string designator, string letter, FindingList findings)
    {
        if (PreferredSeries.SeriesOf(value.Value) is null)
        {
            var near = Engineering.Drawing(PreferredSeries.NearestE24(value.Value), letter);
            findings.Note(
                value.Word.Place,
                $"{designator}: {value.Word.Text} is in no preferred series (IEC 60063)",
                $"the nearest is {near}; old parts did have such values",
                designator
            );
        }
    }
}
