using Slowglow.Sheets;
using Slowglow.Sheets.Parts;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// Makes the unit that is really on the bench: other device laws than the program's, every part somewhere in its tolerance, its own mains.
/// It is solved as it is; the program knows only the drawing.
/// </summary>
internal sealed class SpecimenMaker(Sheet sheet, Random random)
{
    /// <summary>The unit as it was sold, and as it came in. Null when the wrong part makes it unsolvable.</summary>
    /// <param name="fitted">A part in place of the one of its designator, or on top; null for the unit as drawn.</param>
    public (Specimen Sold, Specimen CameIn)? Make(Part? fitted)
    {
        var sold = Specimen.Of(LawDoubt.Of(sheet, random), random.Next());
        var cameIn = fitted is null ? sold : sold?.With(fitted);
        return sold is null || cameIn is null ? null : (sold, cameIn);
    }
}
