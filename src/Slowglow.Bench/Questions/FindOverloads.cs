using Slowglow.Power.Overload;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Bench.Questions;

/// <summary>What else may be wrong where a part has died.</summary>
public sealed class FindOverloads(BenchUnit unit)
{
    /// <summary>The causes, or why there is no answer.</summary>
    public Parsed<OverloadAnswer> Run(string designator, CancellationToken cancel = default)
    {
        var part = unit.Sheet.Parts.FirstOrDefault(p => p.Designator.Equals(designator, StringComparison.OrdinalIgnoreCase));
        return part switch
        {
            null => Wrong($"there is no part {designator}", "name the part that has died by its designator: T1"),
            WirePart or ContactPart => Wrong(
                $"{part.Designator} stands nothing that could be worked out",
                "name the part that has died"
            ),
            _ => new(
                new(
                    new OverloadQuestion(unit.Worlds).Ask(part, cancel),
                    part is FusePart fuse ? new SwitchOnQuestion(unit.Worlds).Of(fuse, cancel) : null
                ),
                []
            ),
        };
    }

    private static Parsed<OverloadAnswer> Wrong(string text, string remedy) =>
        new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
