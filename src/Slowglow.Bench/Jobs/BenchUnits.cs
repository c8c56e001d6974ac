using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Slowglow.Bench.Questions;
using Slowglow.Sheets;

namespace Slowglow.Bench.Jobs;

/// <summary>Units already read and solved, one per sheet text, shared by all jobs and pages. Thread-safe.</summary>
public sealed class BenchUnits
{
    private readonly ConcurrentDictionary<string, Lazy<Parsed<BenchUnit>>> known = new();

    /// <summary>The unit of that sheet, with everything solved of it so far.</summary>
    public Parsed<BenchUnit> Of(string sheetText)
    {
        var key = Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(sheetText)));
        return known.GetOrAdd(key, _ => new(() => BenchUnit.From(sheetText))).Value;
    }
}
