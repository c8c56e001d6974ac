namespace Slowglow.Circuits.Building;

/// <summary>A relay's coil in the equations.</summary>
/// <param name="Plus">Row of its first end.</param>
/// <param name="Minus">Row of its second end.</param>
/// <param name="Slot">Slot of its siemens: an open coil has volts and no pull.</param>
/// <param name="Siemens">As made.</param>
/// <param name="PullInVolts">Volts rms at which it pulls in.</param>
/// <param name="ReleaseVolts">Volts rms at which it lets go.</param>
internal sealed record RelayCoil(int Plus, int Minus, int Slot, double Siemens, double PullInVolts, double ReleaseVolts);
