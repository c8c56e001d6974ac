using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Rewinding;

/// <summary>One rewinding: design, put back, compare the rails, ask for a little more or less, design again.</summary>
internal sealed class RewindRun(
    Sheet sheet,
    TransformerPart part,
    IReadOnlyList<WindingDuty> duties,
    RailGoals goals,
    RewindRequest request,
    TappedPrimary? primary
)
{
    private readonly Dictionary<string, double> volts = duties
        .Where(d => !d.IsPrimary)
        .ToDictionary(d => d.Name, d => d.LoadedVolts);

    private CoreStack? Wanted => request.Core ?? request.Measured.CoreStack;

    /// <summary>Null when the circuit does not settle with a design in it.</summary>
    public RewindAnswer? Answer(int rounds, double nearEnough, double mostError, CancellationToken cancel)
    {
        var core = Wanted;
        (WoundDesign Design, IReadOnlyList<RailCheck> Rails)? best = null;
        for (var round = 0; round < rounds; round++)
        {
            var design = Design(core);
            core ??= design.Core;
            if (TransformerInCircuit.With(sheet, PutBack.Of(part, design, primary, sheet.Mains.Volts)) is not { } changed)
            {
                return null;
            }

            var checks = goals.Check(changed, cancel);
            if (!checks.All(c => double.IsFinite(c.Given) && c.Given / c.Asked > 0))
            {
                return null;
            }

            if (best is null || checks.Max(c => c.Error) < best.Value.Rails.Max(c => c.Error))
            {
                best = (design, checks);
            }

            if (checks.Max(c => c.Error) < nearEnough)
            {
                break;
            }

            foreach (var check in checks)
            {
                volts[check.Winding] *= check.Asked / check.Given;
            }
        }

        return Finish(best!.Value.Design, best.Value.Rails, mostError);
    }

    private WoundDesign Design(CoreStack? core) =>
        core is not null
            ? TransformerDesigner.On(core, Need(), request.Limits)
            : TransformerDesigner.Smallest(Need(), request.Limits)
                ?? TransformerDesigner.On(CoreStack.Standard[^1], Need(), request.Limits);

    private TransformerNeed Need()
    {
        IEnumerable<WindingNeed> primaries = primary is null
            ? part
                .Windings.Where(w => w.IsPrimary)
                .Select(w => new WindingNeed(w.Name, w.SectionVolts, double.NaN, double.NaN, true))
            : new[] { "P1", "P2" }.Select(n => new WindingNeed(n, primary.Sections, double.NaN, double.NaN, true));
        var secondaries = part.Windings.Where(w => !w.IsPrimary).Select(Secondary);
        return new TransformerNeed([.. primaries, .. secondaries], sheet.Mains.Frequency)
        {
            SpreadVolts = primary?.LeastSpreadVolts,
            Reflected = Reflected,
        };
    }

    /// <summary>By the world, which knows how the rectifiers share.</summary>
    private double Reflected =>
        Math.Clamp(
            duties.Where(d => d.IsPrimary).Sum(d => d.VoltAmperes) / duties.Where(d => !d.IsPrimary).Sum(d => d.VoltAmperes),
            0.5,
            1
        );

    private WindingNeed Secondary(Winding w)
    {
        var duty = duties.Single(d => d.Name == w.Name);
        var total = w.SectionVolts.Sum();
        double[] sections = [.. w.SectionVolts.Select(v => v / total * volts[w.Name])];
        return new WindingNeed(w.Name, sections, Math.Max(duty.DesignAmps, 1e-3), duty.AmpsRms, false);
    }

    private RewindAnswer Finish(WoundDesign design, IReadOnlyList<RailCheck> rails, double mostError)
    {
        var worst = rails.MaxBy(r => r.Error)!;
        var refusal =
            design.Misses is { } missed ? $"{part.Designator} cannot be wound on {design.Core}: {missed}."
            : worst.Error > mostError
                ? $"{part.Designator} cannot be wound on {design.Core}: in whole turns {worst.Where} comes to {Engineering.Format(worst.Given, "V")} where {Engineering.Format(worst.Asked, "V")} belongs."
            : null;
        var larger = refusal is not null ? TransformerDesigner.Smallest(Need(), request.Limits) : null;
        return new RewindAnswer(
            part.Designator,
            duties,
            design,
            refusal,
            larger,
            rails,
            primary,
            FlashTest.Of(design),
            WinderNotes.Of(design, duties, request)
        );
    }
}
