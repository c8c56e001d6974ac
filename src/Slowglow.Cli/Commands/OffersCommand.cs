using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Power.Offers;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow offers SHEET T1 --offer ...</summary>
internal sealed class OffersCommand : UnitCommand<OffersSettings, IReadOnlyList<OfferAnswer>>
{
    protected override string Doing => "Trying every offer";

    protected override Parsed<IReadOnlyList<OfferAnswer>> Ask(
        BenchUnit unit,
        Opened opened,
        OffersSettings settings,
        CancellationToken cancel
    ) => new CompareOffers(unit).Run(settings.Transformer, settings.Offers, settings.Place, cancel);

    protected override object Json(
        IReadOnlyList<OfferAnswer> answer,
        OffersSettings settings,
        IReadOnlyList<DocumentFinding> findings
    ) => OffersJson.From(settings.Transformer, answer, findings);

    protected override void Report(
        IAnsiConsole console,
        BenchUnit unit,
        IReadOnlyList<OfferAnswer> answer,
        OffersSettings settings
    ) => OffersReport.Write(console, settings.Transformer, answer);
}
