using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals.Practice;
using Slowglow.Circuits;
using Slowglow.Sheets.Readings;
using Slowglow.Web.Bench.Words;

namespace Slowglow.Web.Practice;

/// <summary>What a round of practice says.</summary>
internal static class PracticeWords
{
    /// <summary>What the meter shows.</summary>
    public static string Shown(Reading? reading) =>
        reading is null ? "never comes to rest"
        : reading.Said == MeterSaid.Overload ? "OL"
        : Figures.Value(reading.Value, reading.Probe.Unit, 4);

    /// <summary>What a healthy unit shows, with its band.</summary>
    public static string Belongs(Expectation expected) =>
        expected.Kind == AnswerKind.Value
            ? $"{Figures.Value(expected.Nominal, expected.Unit)} ({Figures.Band(expected.Low, expected.High, expected.Unit)})"
            : Figures.Without(expected.Kind);

    /// <summary>What came of changing a part.</summary>
    public static string Said(PracticeChange change) =>
        change.Cured ? "That was it: the unit is well again."
        : change.BlowsAgain ? "The new one blows as well. Something blew it."
        : "It does as it did before.";
}
