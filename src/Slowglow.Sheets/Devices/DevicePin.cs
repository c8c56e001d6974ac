namespace Slowglow.Sheets.Devices;

/// <summary>One pin of a device.</summary>
/// <param name="Number">As printed on the base or package.</param>
/// <param name="Section">1, 2 ... for multiple devices in one envelope; 0 for shared pins (heater, supply).</param>
/// <param name="Electrode">
/// Within the section: a g k g2 h (valves), a k (diodes), c b e, d g s, in+ in- out v+ v- (op-amps), in out gnd adj (regulators), nc.
/// </param>
public sealed record DevicePin(string Number, int Section, string Electrode);
