using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Sums;

/// <summary>A sum of the kind done on the back of an envelope, with its working. Thread-safe.</summary>
public abstract class BenchSum
{
    /// <summary>Short name, as in a link: "valve-stage".</summary>
    public abstract string Key { get; }
    public abstract string Title { get; }
    public abstract IReadOnlyList<SumField> Fields { get; }

    /// <summary>Reads what was typed and works it out; null with findings that say what would be right.</summary>
    public Parsed<SumAnswer> Work(IReadOnlyDictionary<string, string> typed, CancellationToken cancel = default)
    {
        Dictionary<string, double> figures = [];
        Dictionary<string, string> words = [];
        List<Finding> wrong = [];
        foreach (var field in Fields)
        {
            var text = typed.GetValueOrDefault(field.Key, "").Trim();
            if (field.IsWord)
            {
                words[field.Key] = text;
            }
            else if (Read(field, text, wrong) is { } value)
            {
                figures[field.Key] = value;
            }
        }

        return wrong.Count > 0 ? new(null, wrong) : Answer(new SumFigures(figures, words), cancel);
    }

    protected abstract Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel);

    protected static Parsed<SumAnswer> Wrong(string text, string remedy) =>
        new(null, [new Finding(Severity.Error, Place.None, text, remedy)]);

    protected static Parsed<SumAnswer> Right(SumAnswer answer) => new(answer, []);

    protected static SumLine Line(string what, double value, string unit, int digits = 3) =>
        new(what, Engineering.Format(value, unit, digits));

    protected static string Say(double value, string unit, int digits = 3) => Engineering.Format(value, unit, digits);

    private static double? Read(SumField field, string text, List<Finding> wrong)
    {
        if (text.Length == 0 && field.MayBeEmpty)
        {
            return double.NaN;
        }

        var initial = field.Initial.Length > 0 ? field.Initial : "10k";
        if (text.Length == 0)
        {
            wrong.Add(new(Severity.Error, Place.None, $"{field.Label} is missing.", $"Type it as {initial}."));
        }
        else if (!QuantityText.TryRead(text, out var read))
        {
            wrong.Add(
                new(Severity.Error, Place.None, $"{field.Label}: \"{Cut(text)}\" is not a figure.", $"Type it as {initial}.")
            );
        }
        else if (!read.Fits(field.Unit))
        {
            wrong.Add(new(Severity.Error, Place.None, $"{field.Label}: {text} is another unit.", $"Type it as {initial}."));
        }
        else if (!(read.Value > 0) || read.Value > 1e12)
        {
            wrong.Add(new(Severity.Error, Place.None, $"{field.Label}: {text} cannot be.", "Give a figure above nothing."));
        }
        else
        {
            return read.Value;
        }

        return null;
    }

    private static string Cut(string text) => text.Length > 30 ? text[..30] + "..." : text;
}
