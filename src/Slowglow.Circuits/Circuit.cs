using Slowglow.Circuits.Building;
using Slowglow.Circuits.Checks;
using Slowglow.Circuits.Models;
using Slowglow.Circuits.Models.Fuse;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits;

/// <summary>The checked meaning of a sheet, ready to be solved. Immutable and safe to share between threads.</summary>
public sealed class Circuit
{
    private readonly double[] baseSlots;
    private IReadOnlyList<double>? deviations;

    private Circuit(CircuitBuilder builder, Fixtures fixtures, IReadOnlyList<PartModel> models)
    {
        Sheet = builder.Sheet;
        Fixtures = fixtures;
        Models = models;
        Rows = builder.Rows;
        Parameters = [.. builder.Parameters];
        Changes = [.. builder.Changes];
        OpenAtCrest = [.. builder.OpenAtCrest];
        Turns = builder.Turns;
        baseSlots = builder.Equations.SlotValues();
        Equations = builder.Equations.Build();
        Owners = new SlotOwners(Equations);
        Faults = [.. models.SelectMany(m => m.Faults())];
    }

    public Sheet Sheet { get; }

    /// <summary>Everything that varies between specimens; independent of each other.</summary>
    public IReadOnlyList<RandomParameter> Parameters { get; }

    /// <summary>Every single fault that the models can compute, with a grid of severities for the soft ones.</summary>
    public IReadOnlyList<Fault> Faults { get; }
    internal Equations Equations { get; }
    internal SlotOwners Owners { get; }
    internal Fixtures Fixtures { get; }
    internal IReadOnlyList<PartModel> Models { get; }
    internal IReadOnlyList<SlotChange[]> Changes { get; }
    internal IReadOnlyList<int> OpenAtCrest { get; }

    /// <summary>By parameter: windings whose turns it moves.</summary>
    internal IReadOnlyDictionary<int, TurnsSpread> Turns { get; }

    /// <summary>Net to row; ground is -1.</summary>
    internal IReadOnlyDictionary<string, int> Rows { get; }

    /// <summary>
    /// Builds the circuit and checks it: missing ground, floating nets, a loop of sources, a valve without a cathode return, and so on,
    /// each named. Null value when an error makes it unsolvable.
    /// </summary>
    public static Parsed<Circuit> From(Sheet sheet)
    {
        var builder = new CircuitBuilder(sheet);
        List<PartModel> models = [.. sheet.Parts.Select(p => ModelOf.Part(p, sheet)).OfType<PartModel>()];
        foreach (var model in models)
        {
            model.Build(builder);
        }

        var fixtures = Fixtures.Lay(builder);
        List<Finding> findings = [.. builder.Findings, .. CircuitChecks.Of(sheet)];
        var usable = findings.All(f => f.Severity != Severity.Error) && builder.Equations.Unknowns > 0;
        return new Parsed<Circuit>(usable ? new Circuit(builder, fixtures, models) : null, findings);
    }

    /// <summary>
    /// One unit as it came off the line: every random parameter lies that many standard deviations from its nominal value, and stays there
    /// whatever is asked of it. What is proportional moves by its logarithm, so that nothing turns negative.
    /// </summary>
    /// <param name="standardDeviations">One for each of <see cref="Parameters"/>.</param>
    public Circuit Specimen(IReadOnlyList<double> standardDeviations)
    {
        // A sine in series would feed a winding that nothing feeds: turns are really wound otherwise.
        var sheet = Turns.Aggregate(Sheet, (s, t) => t.Value.Rewound(s, standardDeviations[t.Key]));
        var specimen = Turns.Count == 0 ? (Circuit)MemberwiseClone() : From(sheet).Value!;
        specimen.deviations = [.. standardDeviations.Select((d, p) => Turns.ContainsKey(p) ? 0 : d)];
        return specimen;
    }

    /// <summary>Slot values of a world.</summary>
    internal double[] SlotsOf(Setup setup, IReadOnlyList<Fault> faults)
    {
        var slots = (double[])baseSlots.Clone();
        foreach (var model in Models)
        {
            model.Stand(setup, slots);
        }

        Fixtures.Stand(setup, Sheet, slots);
        Deviate(slots);
        foreach (var fault in faults)
        {
            // With the limiter in, a good fuse is taken as fitted.
            if (setup.LimiterWatts is null || Models.FirstOrDefault(m => m.Designator == fault.Part) is not FuseModel)
            {
                Models.FirstOrDefault(m => m.Designator == fault.Part)?.Apply(fault, slots);
            }
        }

        foreach (var leg in setup.Lifted)
        {
            Lift(leg, slots);
        }

        return slots;
    }

    private void Deviate(double[] slots)
    {
        for (var p = 0; p < (deviations?.Count ?? 0); p++)
        {
            foreach (var change in Changes[p])
            {
                var moved = slots[change.Slot] * Math.Exp(change.Relative * deviations![p]);
                slots[change.Slot] = moved + (change.Absolute * deviations[p]);
            }
        }
    }

    /// <summary>True when the models can compute the fault.</summary>
    public bool Knows(Fault fault) =>
        Models.FirstOrDefault(m => m.Designator == fault.Part)?.Apply(fault, (double[])baseSlots.Clone()) == true;

    private void Lift(string leg, double[] slots)
    {
        var dot = leg.IndexOf('.', StringComparison.Ordinal);
        var (part, pin) = dot < 0 ? (leg, "1") : (leg[..dot], leg[(dot + 1)..]);
        Models.FirstOrDefault(m => m.Designator == part)?.Lift(pin, slots);
    }
}
