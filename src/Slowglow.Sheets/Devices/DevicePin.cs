namespace Slowglow.Sheets.Devices;

/// <summary>One pin of a device.</summary>
/// <param name="Number">As printed on the base or package.</param>
/// <param name="Section">1, 2 ... for multiple devices in one envelope; 0 for shared pins (heater, supply).</param>
/// <param name="Electrode">
/// Within the section: a g k g2 (valves; g3 suppressor, is shield, h heater, ht its tap, f the far end of a filament whose other end is
/// k, d a detector's diode), a k (diodes), c b e, d g s, in+ in- out v+ v- (op-amps), in out gnd adj (regulators), nc or ic (not
/// connected, connected inside).
/// </param>
public sealed record DevicePin(string Number, int Section, string Electrode);
