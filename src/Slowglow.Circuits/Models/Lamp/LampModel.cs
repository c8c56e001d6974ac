using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Setups;

namespace Slowglow.Circuits.Models.Lamp;

internal sealed class LampModel(LampPart part) : FixedConductanceModel(part)
{
    /// <summary>Hot over cold resistance of tungsten: 14.34 to 15 (reference/lamp_resistances.csv).</summary>
    private const double HotOverCold = 14.5;

    protected override double Siemens => part.RatedWatts / (part.RatedVolts * part.RatedVolts);

    protected override double SiemensIn(Setup setup) => setup.PowerOff ? Siemens * HotOverCold : Siemens;
}
