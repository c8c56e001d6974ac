namespace Slowglow.Solving;

/// <summary>How a slot moves with a parameter: by a fraction of its value, plus an amount of its own.</summary>
public readonly record struct SlotChange(int Slot, double Relative, double Absolute = 0);
