using System.Collections.Concurrent;
using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals.Practice;
using Slowglow.Sheets;

namespace Slowglow.Web.Practice;

/// <summary>Rounds of practice that were begun since the program started: an address opened again goes on where it stood.</summary>
public sealed class PracticeRounds(StartPractice start)
{
    /// <summary>Rounds that stay open; the one begun first is forgotten beyond that.</summary>
    private const int Most = 100;

    private readonly ConcurrentDictionary<(BenchUnit Unit, int Number), PracticeRound> rounds = new();
    private readonly ConcurrentQueue<(BenchUnit Unit, int Number)> begun = new();

    /// <summary>The round that is on, or a new one. Call it off the page's thread: it solves.</summary>
    public Parsed<PracticeRound> Of(BenchUnit unit, int number, IProgress<double> progress, CancellationToken cancel)
    {
        if (rounds.TryGetValue((unit, number), out var round))
        {
            return new(round, []);
        }

        var started = start.Run(unit, number, progress, cancel);
        if (started.Value is not { } fresh)
        {
            return started;
        }

        begun.Enqueue((unit, number));
        while (begun.Count > Most && begun.TryDequeue(out var oldest))
        {
            rounds.TryRemove(oldest, out _);
        }

        return new(rounds.GetOrAdd((unit, number), fresh), started.Findings);
    }

    /// <summary>The same unit once more, as it came in.</summary>
    public void Forget(BenchUnit unit, int number) => rounds.TryRemove((unit, number), out _);
}
