using Slowglow.Circuits;
using Slowglow.Circuits.Building;
using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.Overload;

/// <summary>
/// Inrush: a reservoir that is charged through resistance leaves as much heat there as it then holds, whatever the resistance. The world
/// with every reservoir shorted says how that heat is shared out, and what current in the fuse goes with it.
/// </summary>
/// <param name="worlds">The unit.</param>
public sealed class SwitchOnQuestion(Worlds worlds)
{
    /// <summary>Below this multiple of the running current the charging cannot be told from what the unit draws anyway.</summary>
    private const double Apart = 2;

    /// <summary>Null where the unit has no reservoir.</summary>
    public SwitchOn? Of(FusePart fuse, CancellationToken cancel = default)
    {
        var rails = RectifiedNets.WithJoints(worlds.Circuit.Sheet);
        CapacitorPart[] reservoirs =
        [
            .. worlds.Circuit.Sheet.Parts.OfType<CapacitorPart>().Where(c => c.Pins.Any(p => rails.Contains(p.Net))),
        ];
        Fault[] shorted =
        [
            .. worlds.Circuit.Faults.Where(f => f.Mode == FailureMode.Short && reservoirs.Any(c => c.Designator == f.Part)),
        ];
        if (shorted.Length == 0)
        {
            return null;
        }

        var melting = FuseTime.LeastMelting(fuse.RatedAmps, fuse.Speed);
        if (!worlds.World(Setup.Default, shorted, cancel).Settled)
        {
            return new(
                fuse.Designator,
                double.NaN,
                melting,
                $"What switching on asks of {fuse.Designator} could not be worked out: the circuit with its reservoirs empty does not settle."
            );
        }

        var charging = worlds.Stress(Setup.Default, shorted);
        var amps = charging.Single(s => s.Part == fuse.Designator).AmpsRms;
        var resting = worlds.Stress(Setup.Default, []).Single(s => s.Part == fuse.Designator).AmpsRms;
        var watts = charging.Where(s => double.IsFinite(s.Watts)).Sum(s => s.Watts);
        return amps < Apart * resting
            ? new(fuse.Designator, double.NaN, melting, Hardly(fuse.Designator, amps, resting))
            : new(fuse.Designator, Held(reservoirs, cancel) * amps * amps / watts, melting);
    }

    private static string Hardly(string fuse, double amps, double resting) =>
        $"Empty reservoirs are no surge for {fuse}: with every one of them empty it carries {Engineering.Format(amps, "A", 2)}, running {Engineering.Format(resting, "A", 2)}. Cold heaters, and a core that saturates (toroids most), come on top.";

    /// <summary>Joules in the reservoirs of the running unit.</summary>
    private double Held(CapacitorPart[] reservoirs, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var volts = worlds.Stress(Setup.Default, []).ToDictionary(s => s.Part, s => s.Volts);
        return reservoirs.Sum(c => 0.5 * c.Farads * volts[c.Designator] * volts[c.Designator]);
    }
}
