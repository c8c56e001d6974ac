namespace Slowglow.Bench.Sums;

/// <summary>What was typed into a sum, read: figures in base units, words as they are.</summary>
public sealed class SumFigures(IReadOnlyDictionary<string, double> figures, IReadOnlyDictionary<string, string> words)
{
    /// <summary>NaN where a field that may be empty was left so.</summary>
    public double this[string key] => figures[key];

    public string Word(string key) => words[key];
}
