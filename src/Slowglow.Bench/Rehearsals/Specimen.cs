using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Rehearsals;

/// <summary>One unit as it is, with every part where the draw put it in its tolerance. The same seed puts all parts in the same places.</summary>
internal sealed class Specimen
{
    /// <summary>Tolerances are taken as two standard deviations; what lies beyond these is not sold.</summary>
    private const double Furthest = 2.5;

    private readonly Sheet real;
    private readonly int seed;

    private Specimen(Sheet real, int seed, Circuit circuit)
    {
        (this.real, this.seed) = (real, seed);
        Worlds = new Worlds(circuit);
    }

    public Worlds Worlds { get; }

    /// <summary>Null when the sheet cannot be solved.</summary>
    public static Specimen? Of(Sheet real, int seed)
    {
        if (Circuit.From(real).Value is not { } circuit)
        {
            return null;
        }
        var draw = new Random(seed);
        double[] deviations = [.. circuit.Parameters.Select(_ => Math.Clamp(draw.Normal(), -Furthest, Furthest))];
        return new(real, seed, circuit.Specimen(deviations));
    }

    /// <summary>The same unit with a part in place of the one of its designator, or on top.</summary>
    public Specimen? With(Part fitted)
    {
        var known = real.Parts.Any(p => p.Designator == fitted.Designator);
        IEnumerable<Part> parts = known
            ? real.Parts.Select(p => p.Designator == fitted.Designator ? fitted : p)
            : [.. real.Parts, fitted];
        return Of(real with { Parts = [.. parts] }, seed);
    }

    /// <summary>The same unit with the meter standing on two nets: where nothing else holds them, the meter does.</summary>
    public Specimen? WithMeter(Probe probe, MeterClass meter) =>
        With(
            new ResistorPart
            {
                Designator = "METER",
                Pins = [new("1", "", probe.Red), new("2", "", probe.Black)],
                Ohms = meter.InputOhms,
                Tolerance = 0,
                Description = meter.Name,
            }
        );
}
