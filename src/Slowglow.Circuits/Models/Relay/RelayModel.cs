using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Relay;

namespace Slowglow.Circuits.Models.Relay;

/// <summary>A relay's coil as a resistance: what its contacts do is theirs.</summary>
internal sealed class RelayModel(RelayPart part) : FixedConductanceModel(part)
{
    protected override double Siemens => 1 / part.Ohms;

    protected override void Lay(CircuitBuilder builder)
    {
        base.Lay(builder);
        builder.Coils[Designator] = new RelayCoil(Plus, Minus, Slot, Siemens, part.PullInVolts, part.ReleaseVolts);
    }

    public override IEnumerable<Fault> Faults() => [Whole(FailureMode.Open), Whole(FailureMode.Short)];

    public override PartStress Stress(StressView view) =>
        StressOf(view, double.NaN, double.NaN) with
        {
            VoltsRatio = Math.Sqrt(view.MeanSquareAcross(Plus, Minus)) / part.RatedVolts,
        };
}
