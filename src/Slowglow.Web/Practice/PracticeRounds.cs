using System.Collections.Concurrent;
using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals.Practice;
using Slowglow.Sheets;

namespace Slowglow.Web.Practice;

/// <summary>Rounds of practice that were begun since the program started: an address opened again goes on where it stood.</summary>
public sealed class PracticeRounds(StartPractice start)
{
    private readonly ConcurrentDictionary<(BenchUnit Unit, int Number), PracticeRound> rounds = new();

    /// <summary>The round that is on, or a new one. Call it off the page's thread: it solves.</summary>
    public Parsed<PracticeRound> Of(BenchUnit unit, int number, IProgress<double> progress, CancellationToken cancel)
    {
        if (rounds.TryGetValue((unit, number), out var round))
        {
            return new(round, []);
        }

        var begun = start.Run(unit, number, progress, cancel);
        return begun.Value is { } fresh ? new(rounds.GetOrAdd((unit, number), fresh), begun.Findings) : begun;
    }

    /// <summary>The same unit once more, as it came in.</summary>
    public void Forget(BenchUnit unit, int number) => rounds.TryRemove((unit, number), out _);
}
