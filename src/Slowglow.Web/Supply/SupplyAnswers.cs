using System.Runtime.CompilerServices;
using Slowglow.Bench.Questions;

namespace Slowglow.Web.Supply;

/// <summary>
/// Answers about the supply of a unit, worked out one after the other and kept as long as the unit is: a page that is opened again has its
/// figures at once, also when its person walked away meanwhile.
/// </summary>
public sealed class SupplyAnswers : IDisposable
{
    /// <summary>More are not kept of one unit: rewinding and offers can be asked without end.</summary>
    private const int MostKept = 40;

    private readonly ConditionalWeakTable<BenchUnit, List<(string Question, Task Answer)>> known = [];
    private readonly SemaphoreSlim one = new(1, 1);
    private readonly CancellationTokenSource closing = new();

    /// <summary>The answer to a question; one that failed is worked out anew when asked again.</summary>
    /// <param name="unit">Asked of.</param>
    /// <param name="question">Names question and wishes, so that it is found again.</param>
    /// <param name="ask">Works it out; called on another thread.</param>
    public Task<T> AskAsync<T>(BenchUnit unit, string question, Func<CancellationToken, T> ask)
    {
        var kept = known.GetOrCreateValue(unit);
        lock (kept)
        {
            kept.RemoveAll(k => k.Answer.IsFaulted || k.Answer.IsCanceled);
            if (kept.Find(k => k.Question == question).Answer is Task<T> there)
            {
                return there;
            }

            if (kept.Count >= MostKept)
            {
                kept.RemoveAt(0);
            }

            var answer = Task.Run(() => WorkAsync(ask));
            kept.Add((question, answer));
            return answer;
        }
    }

    public void Dispose() => closing.Cancel();

    private async Task<T> WorkAsync<T>(Func<CancellationToken, T> ask)
    {
        await one.WaitAsync(closing.Token);
        try
        {
            return ask(closing.Token);
        }
        finally
        {
            one.Release();
        }
    }
}
