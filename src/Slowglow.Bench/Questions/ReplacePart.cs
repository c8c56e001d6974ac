using Slowglow.Power.Stress;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Tries another part in the place of one: "R5 with 120k 1W".</summary>
/// <param name="unit">As drawn.</param>
/// <param name="sheetText">The text it was read from.</param>
public sealed class ReplacePart(BenchUnit unit, string sheetText)
{
    private const string Example = "write R5 with 120k 1W";

    /// <summary>A point has moved when it differs by this share, and by more than a meter's last digit.</summary>
    private const double Moves = 0.02;
    private const double LeastVolts = 0.02;

    public Parsed<Replacement> Run(string words, CancellationToken cancel = default)
    {
        var at = words.IndexOf(" with ", StringComparison.OrdinalIgnoreCase);
        var name = at > 0 ? words[..at].Trim() : "";
        var fresh = at > 0 ? words[(at + 6)..].Trim() : "";
        if (name.Length == 0 || fresh.Length == 0)
        {
            return Wrong($"\"{words}\" does not say what comes in the place of what", Example);
        }

        if (unit.Sheet.Parts.FirstOrDefault(p => p.Designator.Equals(name, StringComparison.OrdinalIgnoreCase)) is not { } part)
        {
            return Wrong($"there is no part {name}", Example);
        }

        if (PartText.With(sheetText, unit.Sheet, part, fresh) is not { } text)
        {
            return Wrong(
                $"{part.Designator} is not written on one line in the sheet",
                "change it in the sheet itself, and ask expect and stress"
            );
        }

        var changed = BenchUnit.From(text);
        return changed.Value is { } other
            ? new(Compare(part, other, cancel), [])
            : new(
                null,
                [
                    .. changed
                        .Findings.Where(f => f.Severity == Severity.Error)
                        .Select(f => f with { Text = $"with \"{fresh}\": {f.Text}", Place = Place.None }),
                ]
            );
    }

    private Replacement Compare(Part part, BenchUnit other, CancellationToken cancel)
    {
        var setup = Setup.Default;
        var before = new ExpectReadings(unit).Run(setup, cancel);
        var after = new ExpectReadings(other).Run(setup, [.. before.Select(b => b.Probe)], cancel);
        MovedPoint[] moved =
        [
            .. before
                .Zip(after, (b, a) => new MovedPoint(b, a.Nominal))
                .Where(HasMoved)
                .OrderByDescending(m => Math.Abs(m.Now - m.Before.Nominal) / Math.Max(Math.Abs(m.Before.Nominal), 1)),
        ];
        var levels = new ComputeLevels(unit).Run(setup, [], cancel).Zip(new ComputeLevels(other).Run(setup, [], cancel));
        var was = new StressQuestion(unit.Worlds).Ask(cancel);
        var now = new StressQuestion(other.Worlds).Ask(cancel);
        var fresh = other.Sheet.Parts.First(p => p.Designator == part.Designator);
        return new(
            part.Designator,
            part.Description,
            fresh.Description,
            moved,
            before.Count,
            [.. levels.SelectMany(c => LevelWords.Compare(c.First, c.Second))],
            [.. now.Where(r => r.IsOver)],
            [.. was.Where(r => r.IsOver).Select(r => $"{r.Part} {r.What}")],
            [.. now.Where(r => r.Part == part.Designator || r.Part.StartsWith(part.Designator + " ", StringComparison.Ordinal))],
            other.Findings
        );
    }

    private static bool HasMoved(MovedPoint point)
    {
        var (was, now) = (point.Before.Nominal, point.Now);
        return double.IsNaN(was) != double.IsNaN(now) || Math.Abs(now - was) > Math.Max(Moves * Math.Abs(was), LeastVolts);
    }

    private static Parsed<Replacement> Wrong(string text, string remedy) =>
        new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
