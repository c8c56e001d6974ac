namespace Slowglow.Circuits.Models;

/// <summary>One section of a device in the equations.</summary>
/// <param name="Number">As in the pinout; 0 for a single device.</param>
/// <param name="Element">Index of its element.</param>
/// <param name="Slot">First slot of its constants.</param>
/// <param name="Rows">Row of every electrode, the reference last.</param>
/// <param name="Leaks">Slot of the siemens between two electrodes, by "a-k" either way round.</param>
internal sealed record SectionInPlace(int Number, int Element, int Slot, int[] Rows, IReadOnlyDictionary<string, int> Leaks);
