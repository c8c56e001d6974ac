using Slowglow.Sheets;
using Slowglow.Workshop;

namespace Slowglow.Bench.Jobs;

/// <summary>Objections of the shop's rules as findings.</summary>
internal static class Said
{
    public static IReadOnlyList<Finding> Of(IEnumerable<Objection> objections) =>
        [.. objections.Select(o => new Finding(Severity.Error, Place.None, o.Text, o.Remedy))];

    public static IReadOnlyList<Finding> Wrong(string text, string remedy) => [new(Severity.Error, Place.None, text, remedy)];

    /// <summary>The disk or the database refused.</summary>
    public static IReadOnlyList<Finding> NotStored { get; } =
        Wrong("This could not be stored.", "Is the disk full, or the database away? What was typed is still here.");

    public static IReadOnlyList<Finding> NoJob(int number) => Wrong($"There is no job {number}.", "Look in the job book.");
}
