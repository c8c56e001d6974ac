namespace Slowglow.Circuits;

/// <summary>Ripple current of a capacitor.</summary>
/// <param name="Part">Designator.</param>
/// <param name="AmpsRms">Rms over the mains cycle.</param>
public readonly record struct CapacitorCurrent(string Part, double AmpsRms);
