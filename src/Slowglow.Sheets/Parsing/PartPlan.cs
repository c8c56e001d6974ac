using Slowglow.Sheets.Parts;

namespace Slowglow.Sheets.Parsing;

/// <summary>A part understood, waiting for its nets.</summary>
/// <param name="Entry">What the sheet says.</param>
/// <param name="Pins">In the order that the kind documents.</param>
/// <param name="Build">Makes the part from pins with nets, in the same order.</param>
internal sealed record PartPlan(PartEntry Entry, IReadOnlyList<PinPlan> Pins, Func<IReadOnlyList<Pin>, Part> Build);
