using Slowglow.Bench.Questions;
using Slowglow.Sheets;

namespace Slowglow.Bench.Rehearsals.Practice;

/// <summary>Puts a unit with a hidden fault on the bench, drawn as often as a shop would see it.</summary>
public sealed class StartPractice
{
    /// <summary>All shops hide the same faults behind the same numbers, so that two people can compare.</summary>
    private const int Seed = 2;

    /// <summary>Largest number of a unit.</summary>
    public const int MostUnits = 9999;

    /// <summary>Takes as long as a first diagnosis when the unit's sheet has not been weighed before.</summary>
    /// <param name="number">1 to <see cref="MostUnits"/>.</param>
    public Parsed<PracticeRound> Run(
        BenchUnit unit,
        int number,
        IProgress<double>? progress = null,
        CancellationToken cancel = default
    )
    {
        if (number is < 1 or > MostUnits)
        {
            return Wrong($"There is no unit number {number}.", $"a number from 1 to {MostUnits}");
        }
        var hidden = new HiddenUnits(unit, Seed, progress, cancel).Hide(number, HiddenKind.Single, FaultDraw.Priors, cancel);
        return hidden is null
            ? Wrong($"Number {number} came out as a unit that nobody would complain of.", "another number")
            : new(new PracticeRound(unit, hidden, number), []);
    }

    private static Parsed<PracticeRound> Wrong(string text, string remedy) =>
        new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
