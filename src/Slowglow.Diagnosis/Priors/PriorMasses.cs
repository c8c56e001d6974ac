using Slowglow.Circuits;
using Slowglow.Sheets;

namespace Slowglow.Diagnosis.Priors;

/// <summary>Prior mass of every single fault: rate of the kind, raised by stress, times the share of the mode.</summary>
internal sealed class PriorMasses(Sheet sheet, IReadOnlyList<PartStress> healthyStress, FailureFigures figures)
{
    private readonly Dictionary<string, PartKind> kinds = sheet.Parts.ToDictionary(p => p.Designator, PartKinds.Of);
    private readonly Dictionary<string, PartStress> stresses = healthyStress
        .GroupBy(s => s.Part)
        .ToDictionary(g => g.Key, g => g.First());

    /// <summary>One mass for each fault, in the same order; they are relative to each other and sum to no fixed figure.</summary>
    public double[] Of(IReadOnlyList<Fault> faults)
    {
        var places = faults.GroupBy(f => (f.Part, f.Mode)).ToDictionary(g => g.Key, g => g.Sum(PlaceWeight));
        return [.. faults.Select(f => Mass(f, places[(f.Part, f.Mode)]))];
    }

    public PartKind KindOf(string part) => kinds.GetValueOrDefault(part, PartKind.Unexplained);

    private double Mass(Fault fault, double allPlaces)
    {
        var kind = KindOf(fault.Part);
        var raise = StressRaise.Of(kind, stresses.GetValueOrDefault(fault.Part));
        return figures.RelativeRate(kind) * raise * figures.Share(kind, fault.Mode) * PlaceWeight(fault) / allPlaces;
    }

    /// <summary>
    /// Faults of one mode share its mass over places and severities. Parts drift upward far more often than downward, power transistors
    /// short from collector to emitter first, turns short before a winding breaks through to the core, heaters burn out before pins lose
    /// contact: common practice, no source.
    /// </summary>
    private static double PlaceWeight(Fault fault) =>
        fault switch
        {
            { Mode: FailureMode.Drifted, Severity: < 1 } => 0.3,
            { Mode: FailureMode.Short, Where: "c-e" or "e-c" or "d-s" } => 2,
            { Mode: FailureMode.Open, Where: "heater" } => 20,
            { Mode: FailureMode.Short or FailureMode.Leaky } when fault.Where.Contains(" to ", StringComparison.Ordinal) => 0.3,
            { Mode: FailureMode.Open } when fault.Where.StartsWith("pin ", StringComparison.Ordinal) => 0.3,
            _ => 1,
        };
}
