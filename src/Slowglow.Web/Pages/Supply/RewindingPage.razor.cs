using Slowglow.Bench.Questions;
using Slowglow.Power.Rewinding;
using Slowglow.Sheets;

namespace Slowglow.Web.Pages.Supply;

/// <summary>The transformer that replaces a dead one, specified for a winder.</summary>
public sealed partial class RewindingPage
{
    private const string Example = "core = EI96\nstack = 45 mm\nP = 16 ohm\nP/HT = 0.94";

    private RewindAnswer? answer;
    private IReadOnlyList<Finding> wrong = [];
    private string part = "";
    private string core = "";
    private string mains = "";
    private string insulation = "B";
    private string shownInsulation = "B";
    private string iron = "good";
    private string measuredLines = "";

    protected override Task ArrivedAsync()
    {
        if (part.Length > 0 || Look!.Transformers.Count == 0)
        {
            return Task.CompletedTask;
        }

        part = Look.Transformers[0];
        return AskAsync();
    }

    private async Task AskAsync()
    {
        var wished = RewindRequestReader.Read(core, mains, insulation, iron);
        wrong = wished.Findings;
        if (wished.Value is not { } request)
        {
            return;
        }

        var (name, lines) = (part, measuredLines.Split('\n'));
        var solved = await WorkOutAsync(
            "the windings",
            $"rewind {name}|{core}|{mains}|{insulation}|{iron}|{measuredLines}",
            (unit, cancel) => new RewindTransformer(unit).Run(name, lines, request, cancel)
        );
        (answer, wrong, shownInsulation) = (solved?.Value ?? answer, solved?.Findings ?? [], request.Limits.Class.Letter);
    }
}
