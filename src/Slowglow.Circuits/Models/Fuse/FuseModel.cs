using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Fuse;

namespace Slowglow.Circuits.Models.Fuse;

internal sealed class FuseModel(FusePart part) : FixedConductanceModel(part)
{
    /// <summary>Of a fuse holder that has lost its spring (common practice, no source).</summary>
    private const double HolderOhms = 100;

    protected override double Siemens => 1 / part.Ohms;

    public override IEnumerable<Fault> Faults() => [.. base.Faults(), Whole(FailureMode.BadContact, HolderOhms)];

    public override PartStress Stress(StressView view) => StressOf(view, part.RatedAmps, double.NaN);
}
