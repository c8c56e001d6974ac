using Slowglow.Sheets.Parts.Unknown;

namespace Slowglow.Circuits.Models.Unknown;

internal sealed class UnknownModel(UnknownPart part) : FixedConductanceModel(part)
{
    protected override double Siemens => 1 / part.Ohms;
}
