using Slowglow.Power.Supplies;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Rewinding;

/// <summary>
/// Designs the transformer that replaces one of a sheet: what its windings do comes from the world, and the design goes back into the circuit
/// until the rails are what they were.
/// </summary>
/// <param name="sheet">The unit.</param>
/// <param name="rails">Nets of its supply rails.</param>
public sealed class RewindQuestion(Sheet sheet, IReadOnlyList<string> rails)
{
    private const int Rounds = 5;
    private const double NearEnough = 0.004;

    /// <summary>Whole turns leave rails where they fall; beyond this the design is refused.</summary>
    private const double MostRailError = 0.02;

    /// <summary>The mains transformer of that name, or a finding that says why there is none to design.</summary>
    public static Parsed<TransformerPart> Find(Sheet sheet, string designator)
    {
        var side = MainsSide.Of(sheet);
        if (side.Refusal is { } refusal)
        {
            return Wrong(refusal, "", designator);
        }

        var part = sheet.Parts.FirstOrDefault(p => p.Designator.Equals(designator, StringComparison.OrdinalIgnoreCase));
        var known = string.Join(", ", side.Transformers.Select(t => t.Designator));
        return part switch
        {
            TransformerPart { IsOutput: false } mains when side.Transformers.Contains(mains) => new(mains, []),
            TransformerPart => Wrong(
                $"{part.Designator} is not fed from the mains",
                $"mains transformers here: {known}",
                designator
            ),
            null => Wrong($"there is no part {designator}", $"mains transformers here: {known}", designator),
            _ => Wrong($"{part.Designator} is no transformer", $"mains transformers here: {known}", designator),
        };
    }

    public Parsed<RewindAnswer> Ask(TransformerPart drawn, RewindRequest request, CancellationToken cancel = default)
    {
        var applied = MeasuredSheet.Apply(drawn, request.Measured, sheet.Mains.Frequency);
        if (applied.Value is not { } part)
        {
            return new(null, applied.Findings);
        }

        var primary = request.Mains.Count > 0 ? TappedPrimary.For(request.Mains) : null;
        if (request.Mains.Count > 0 && primary is null)
        {
            return Fail(
                applied.Findings,
                part,
                "no primary of two halves gives these mains voltages",
                "ask for voltages between 80 V and 260 V"
            );
        }

        var now = TransformerInCircuit.With(sheet, part);
        var duties = now?.Duties(cancel) ?? [];
        var goals = duties.Count > 0 ? RailGoals.Of(sheet, now!, rails, cancel) : null;
        if (goals is null)
        {
            return Fail(
                applied.Findings,
                part,
                "the circuit around it does not settle, so that its currents are not known",
                "look at slowglow expect for the point to blame"
            );
        }

        var answer = new RewindRun(sheet, part, duties, goals, request, primary).Answer(
            Rounds,
            NearEnough,
            MostRailError,
            cancel
        );
        return answer is null
            ? Fail(
                applied.Findings,
                part,
                "the circuit does not settle with the new transformer in it",
                "look at the drawing's volts and amperes"
            )
            : new(answer, applied.Findings);
    }

    private static Parsed<RewindAnswer> Fail(IReadOnlyList<Finding> before, TransformerPart part, string text, string remedy) =>
        new(null, [.. before, new(Severity.Error, part.Place, $"{part.Designator}: {text}", remedy, part.Designator)]);

    private static Parsed<TransformerPart> Wrong(string text, string remedy, string subject) =>
        new(null, [new(Severity.Error, Place.None, text, remedy, subject)]);
}
