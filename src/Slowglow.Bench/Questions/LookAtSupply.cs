using Slowglow.Power;
using Slowglow.Power.Supplies;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Says what can be asked about the supply of a unit, without solving anything.</summary>
public sealed class LookAtSupply(BenchUnit unit)
{
    /// <summary>Valves that can be pulled; rectifiers are not among them.</summary>
    public bool HasValves => unit.Sheet.Parts.OfType<ValvePart>().Any(v => v.Device.Kind != DeviceKind.RectifierValve);

    public SupplyLook Run()
    {
        var side = MainsSide.Of(unit.Sheet);
        var rails = Rails.Of(unit.Sheet, Setup.Default);
        var supply = SupplyFaults.Hard(unit.Circuit, rails).Select(f => f.Part).ToHashSet();
        return new(
            side.Refusal,
            [.. side.Transformers.Select(t => t.Designator)],
            [.. unit.Sheet.Parts.Select(p => p.Designator).Where(supply.Contains)]
        );
    }
}
