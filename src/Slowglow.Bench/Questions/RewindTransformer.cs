using Slowglow.Power.Rewinding;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>The specification of a transformer that replaces one of a unit's own.</summary>
public sealed class RewindTransformer(BenchUnit unit)
{
    /// <summary>The specification, or why there is none. <paramref name="lines"/> say what was measured, <paramref name="wanted"/> the rest.</summary>
    public Parsed<RewindAnswer> Run(
        string designator,
        IEnumerable<string> lines,
        RewindRequest wanted,
        CancellationToken cancel = default
    )
    {
        var found = RewindQuestion.Find(unit.Sheet, designator);
        if (found.Value is not { } part)
        {
            return new(null, found.Findings);
        }

        var measured = MeasuredReader.Read(lines, part.Designator, [.. part.Windings.Select(w => w.Name)]);
        if (measured.Value is null)
        {
            return new(null, [.. found.Findings, .. measured.Findings]);
        }

        var rails = Rails.Of(unit.Sheet, Setup.Default);
        return new RewindQuestion(unit.Sheet, rails).Ask(part, wanted with { Measured = measured.Value }, cancel);
    }

    /// <summary>The form on which the wound part is checked, with what was measured on it.</summary>
    public static Parsed<IReadOnlyList<WoundCheckRow>> Check(RewindAnswer answer, IReadOnlyList<string> lines)
    {
        var entered = MeasuredReader.Read(lines, answer.Part, [.. answer.Design.Windings.Select(w => w.Name)]);
        return entered.Value is null ? new(null, entered.Findings) : new(WoundCheck.Of(answer.Design, entered.Value), []);
    }
}
