using System.Globalization;
using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.PowerUp;

/// <summary>The steps, from the cold chassis to the first signal.</summary>
internal sealed class StepList(Sheet sheet, double lampWatts, bool valvesOut)
{
    public IEnumerable<(string Title, string Do, Setup Setup)> All
    {
        get
        {
            yield return (
                "Cold checks",
                "Unplugged, reservoirs discharged and proved: ohms across the plug with its switch on, and from each rail to chassis.",
                Setup.Cold
            );
            foreach (var share in new[] { 0.25, 0.5, 1.0 })
            {
                yield return Powered(share, true, valvesOut);
            }

            yield return Powered(1, false, valvesOut);
            if (valvesOut)
            {
                yield return Powered(1, true, false);
                yield return Powered(1, false, false);
            }
        }
    }

    private (string Title, string Do, Setup Setup) Powered(double share, bool lamp, bool pulled)
    {
        var volts = Math.Round(share * sheet.Mains.Volts);
        var name = string.Create(
            CultureInfo.InvariantCulture,
            $"up-{volts:0}V{(lamp ? $"-{lampWatts:0}W" : "")}{(pulled ? "-valves-out" : "")}"
        );
        var said = Engineering.Format(volts, "V");
        var valves =
            pulled ? ", valves out"
            : valvesOut ? ", valves in"
            : "";
        var title = $"{(share < 1 ? "Part" : "Full")} mains, {said}, {(lamp ? "on the lamp" : "lamp out")}{valves}";
        var how = lamp
            ? $"Lamp {Engineering.Format(lampWatts, "W")} in, turn the variable transformer up to {said}, hand on the switch."
            : $"Lamp out, {said}. DC at the output first, before anything is connected to it; then bias; then the first signal.";
        return (
            title,
            how,
            Setup.Default with
            {
                Name = name,
                MainsVolts = volts,
                LimiterWatts = lamp ? lampWatts : null,
                ValvesOut = pulled,
            }
        );
    }
}
