using Slowglow.Circuits.Building;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Circuits.Models.Wire;

internal sealed class WireModel(WirePart part) : FixedConductanceModel(part)
{
    protected override double Siemens => CircuitBuilder.WireSiemens;

    public override IEnumerable<Fault> Faults() => [.. base.Faults(), .. BadContacts(Severities.Joint)];
}
