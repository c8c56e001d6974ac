using System.Globalization;
using System.Text.RegularExpressions;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Pot;

/// <summary>Positions of stepped pots and ladder attenuators: <c>pot 100k log 21-step</c>, <c>attenuator 10k 23-step 2dB</c>.</summary>
internal static partial class PotSteps
{
    private const int Most = 1000;

    /// <summary>Takes the words; false after an error.</summary>
    internal static bool TryTake(PartFacts facts, SheetContext context, out (int Count, double Decibels) steps)
    {
        steps = (0, double.NaN);
        var (count, decibels) = (Take(facts, Positions()), Take(facts, Decibels()));
        if (count is null && decibels is null)
        {
            return true;
        }

        if (
            count is not { } number
            || !int.TryParse(number.Figure, CultureInfo.InvariantCulture, out var positions)
            || positions is < 2 or > Most
        )
        {
            var word = (count ?? decibels)!.Value.Word;
            context.Findings.Error(
                word.Place,
                $"{facts.Designator}: '{word.Text}' does not say how many positions there are",
                "write 23-step, and the step as 2dB where it is one",
                facts.Designator
            );
            return false;
        }

        steps = (positions, decibels is { } each ? double.Parse(each.Figure, CultureInfo.InvariantCulture) : double.NaN);
        return true;
    }

    private static (Word Word, string Figure)? Take(PartFacts facts, Regex shape)
    {
        var words = facts.Entry.Words;
        var at = words.FindIndex(w => shape.IsMatch(w.Text));
        if (at < 0)
        {
            return null;
        }

        var word = words[at];
        words.RemoveAt(at);
        return (word, shape.Match(word.Text).Groups[1].Value);
    }

    [GeneratedRegex("^([0-9]{1,6})-?(?:steps?|way|positions?)$", RegexOptions.IgnoreCase)]
    private static partial Regex Positions();

    [GeneratedRegex("^([0-9]{1,3}(?:[.][0-9]{1,3})?) ?dB$", RegexOptions.IgnoreCase)]
    private static partial Regex Decibels();
}
