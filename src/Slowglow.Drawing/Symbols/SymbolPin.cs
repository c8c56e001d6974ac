using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Symbols;

/// <summary>Where a wire meets a symbol.</summary>
/// <param name="Name">PART.NUMBER as the sheet has it.</param>
/// <param name="Net">Canonical net.</param>
/// <param name="At">In the symbol's own grid, upright.</param>
/// <param name="Out">Away from the body.</param>
/// <param name="Number">Printed beside the lead; empty where drawings print none.</param>
internal sealed record SymbolPin(string Name, string Net, Cell At, Heading Out, string Number = "");
