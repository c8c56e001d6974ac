using System.Globalization;
using Slowglow.Bench.Sums;
using Slowglow.Quantities;
using Xunit;

namespace Slowglow.Tests.Bench.Sums;

/// <summary>Asks a sum as its page does: by what is typed.</summary>
internal static class Sum
{
    public static SumAnswer Of(string key, params (string Field, string Text)[] typed)
    {
        var worked = Raw(key, typed);
        Assert.True(worked.Value is not null, string.Join('\n', worked.Findings));
        return worked.Value;
    }

    public static Slowglow.Sheets.Parsed<SumAnswer> Raw(string key, params (string Field, string Text)[] typed)
    {
        var sum = BenchSums.All.Single(s => s.Key == key);
        var given = sum.Fields.ToDictionary(f => f.Key, f => f.Initial);
        foreach (var (field, text) in typed)
        {
            Assert.True(given.ContainsKey(field), $"{key} has no {field}");
            given[field] = text;
        }

        return sum.Work(given, TestContext.Current.CancellationToken);
    }

    /// <summary>The figure of the line that begins so, base units; figures are said to three or four digits.</summary>
    public static double Figure(this SumAnswer answer, string what)
    {
        var said = answer.Lines.First(l => l.What.StartsWith(what, StringComparison.Ordinal)).Figure;
        var words = said.Split(' ');
        // Seconds are no unit of a drawing: "440 ms" would read as minutes.
        var inSeconds = words[^1] is "s" or "ms" or "µs";
        return !inSeconds && QuantityText.TryRead(said, out var read) && read.Unit != Unit.Percent
            ? read.Value
            : double.Parse(words[0], CultureInfo.InvariantCulture)
                * (
                    words[^1] == "ms" ? 1e-3
                    : words[^1] == "µs" ? 1e-6
                    : 1
                );
    }

    public static string Words(this SumAnswer answer, string what) => answer.Lines.First(l => l.What == what).Figure;

    public static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
