using System.Diagnostics;

namespace Slowglow.Benchmarks;

/// <summary>Times work.</summary>
internal static class Watch
{
    /// <summary>The shortest of several runs, seconds.</summary>
    public static double Best(int runs, Action work) => Enumerable.Range(0, runs).Min(_ => Once(work));

    /// <summary>One run, seconds.</summary>
    public static double Once(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalSeconds;
    }
}
