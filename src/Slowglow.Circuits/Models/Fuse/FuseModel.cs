using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Fuse;

namespace Slowglow.Circuits.Models.Fuse;

internal sealed class FuseModel(FusePart part) : FixedConductanceModel(part)
{
    protected override double Siemens => 1 / part.Ohms;

    public override IEnumerable<Fault> Faults() => [.. base.Faults(), .. BadContacts(Severities.Joint)];

    public override PartStress Stress(StressView view) => StressOf(view, part.RatedAmps, double.NaN);
}
