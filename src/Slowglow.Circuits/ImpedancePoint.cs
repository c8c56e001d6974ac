namespace Slowglow.Circuits;

/// <summary>Impedance at one frequency.</summary>
/// <param name="Hertz">Frequency.</param>
/// <param name="Ohms">Magnitude.</param>
/// <param name="PhaseDegrees">Above zero inductive, below zero capacitive.</param>
/// <param name="SigmaOhms">One standard deviation of the magnitude over tolerances.</param>
public readonly record struct ImpedancePoint(double Hertz, double Ohms, double PhaseDegrees, double SigmaOhms);
