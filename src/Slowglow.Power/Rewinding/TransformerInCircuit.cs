using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.Rewinding;

/// <summary>A sheet with a transformer of one's choice in the place of its own, solved.</summary>
internal sealed class TransformerInCircuit
{
    private readonly Worlds worlds;
    private readonly Sheet sheet;

    private TransformerInCircuit(Sheet sheet, TransformerPart part, Worlds worlds)
    {
        (this.sheet, Part, this.worlds) = (sheet, part, worlds);
    }

    public TransformerPart Part { get; }

    /// <summary>Null when the sheet cannot be solved with it.</summary>
    public static TransformerInCircuit? With(Sheet sheet, TransformerPart part)
    {
        var changed = sheet with { Parts = [.. sheet.Parts.Select(p => p.Designator == part.Designator ? part : p)] };
        return Circuit.From(changed).Value is { } circuit ? new(changed, part, new Worlds(circuit)) : null;
    }

    /// <summary>Mean volts of nets against chassis; NaN where there is none.</summary>
    public double[] Dc(IReadOnlyList<string> nets, CancellationToken cancel) =>
        Ask([.. nets.Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Dc))], cancel);

    /// <summary>Rms volts across whole windings.</summary>
    public double[] Ac(IReadOnlyList<Winding> windings, CancellationToken cancel) => Ask([.. windings.Select(Across)], cancel);

    private Probe Across(Winding w)
    {
        var (red, black) = (Part.NetOf(w.Pins[0])!, Part.NetOf(w.Pins[^1])!);
        return new Probe($"{Part.Designator}.{w.Pins[0]} - {Part.Designator}.{w.Pins[^1]}", red, black, ProbeKind.Ac);
    }

    public string PlaceOf(Winding w) => Across(w).Where;

    private double[] Ask(Probe[] probes, CancellationToken cancel)
    {
        var answers = worlds.Ask(
            Setup.Default,
            [
                [],
            ],
            probes,
            MeterClass.Handheld,
            cancel: cancel
        )[0];
        return [.. answers.Select(a => a.HasValue ? a.Value : double.NaN)];
    }

    /// <summary>What every winding does; empty when the circuit does not settle.</summary>
    public IReadOnlyList<WindingDuty> Duties(CancellationToken cancel)
    {
        var currents = worlds.World(Setup.Default, [], cancel).WindingCurrents().Where(c => c.Part == Part.Designator).ToArray();
        if (currents.Length == 0)
        {
            return [];
        }

        var volts = Ac(Part.Windings, cancel);
        return
        [
            .. Part.Windings.Zip(
                volts,
                (w, v) =>
                {
                    var busiest = currents.Where(c => c.Winding == w.Name).MaxBy(c => c.AmpsRms)!;
                    return new WindingDuty(
                        w.Name,
                        w.IsPrimary,
                        w.SectionVolts.Sum(),
                        v,
                        busiest.AmpsRms,
                        busiest.AmpsDc,
                        busiest.AmpsCrest,
                        w.RatedAmps,
                        w.SectionOhms.Sum()
                    );
                }
            ),
        ];
    }

    /// <summary>The sheet that was solved.</summary>
    public Sheet Sheet => sheet;
}
