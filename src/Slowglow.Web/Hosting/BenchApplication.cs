using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Slowglow.Bench.Counter;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Keeping;
using Slowglow.Bench.LookingBack;
using Slowglow.Bench.Papers;
using Slowglow.Bench.Papers.Reporting;
using Slowglow.Bench.People;
using Slowglow.Bench.Photographs;
using Slowglow.Bench.Rehearsals.Practice;
using Slowglow.Bench.Stock;
using Slowglow.Bench.Writing;
using Slowglow.Storage;
using Slowglow.Storage.Sqlite;
using Slowglow.Web.Desks;
using Slowglow.Web.Layout;
using Slowglow.Web.People;
using Slowglow.Web.Practice;
using Slowglow.Web.Supply;

namespace Slowglow.Web.Hosting;

/// <summary>Puts the application together.</summary>
internal static class BenchApplication
{
    /// <summary>Bytes. Somebody may paste a whole letter into a field: that deserves a sentence, not a page that goes away.</summary>
    private const int LongestMessage = 4 * 1024 * 1024;

    public static WebApplication Build(BenchOptions options, Uri url, IShopStore shop, string dataPath)
    {
        // The content root is the program's own folder: the working folder may be any.
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseUrls(url.GetLeftPart(UriPartial.Authority));
        builder.Logging.ClearProviders();
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.Logging.AddProvider(new TroubleLogProvider(Path.ChangeExtension(dataPath, ".log"), TimeProvider.System));
        builder
            .Services.AddRazorComponents()
            .AddInteractiveServerComponents()
            .AddHubOptions(o => o.MaximumReceiveMessageSize = LongestMessage);
        builder.Services.Configure<HostFilteringOptions>(o => o.AllowedHosts = ["127.0.0.1", "localhost", "[::1]"]);
        builder.Services.AddSingleton(options);
        AddPapers(builder.Services);
        AddPeople(builder.Services);
        AddWriting(builder.Services, dataPath);
        if (shop is SqliteShop)
        {
            AddKeeping(builder.Services, dataPath);
        }

        AddUseCases(builder.Services, shop, options.Units ?? new BenchUnits());

        var app = builder.Build();
        app.UseHostFiltering();
        app.Use(AddSafeHeaders);
        app.Use(SignInRoutes.GuardAsync);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.Use(RefusePlainlyAsync);
        app.UseAntiforgery();
        EmbeddedAssets.Map(app);
        PaperRoutes.Map(app);
        SignInRoutes.Map(app);
        DrawingRoute.Map(app);
        PhotoRoutes.Map(app);
        SheetRoutes.Map(app);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        return app;
    }

    private static void AddUseCases(IServiceCollection services, IShopStore shop, BenchUnits units)
    {
        services.AddSingleton<IDbContextFactory<ShopDatabase>>(shop);
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(units);
        services.AddSingleton<JobNews>();
        services.AddSingleton<JobLedger>();
        services.AddSingleton<TimelineWriter>();
        services.AddSingleton<OpenDemo>();
        services.AddSingleton<ListJobs>();
        services.AddSingleton<OpenJob>();
        services.AddSingleton<TakeReading>();
        services.AddSingleton<WithdrawReading>();
        services.AddSingleton<ChangeComplaint>();
        services.AddSingleton<ChooseSetup>();
        services.AddSingleton<DescribeSetup>();
        services.AddSingleton<WriteNote>();
        services.AddSingleton<ReadSettings>();
        services.AddSingleton<SettingsWriter>();
        services.AddSingleton<ChooseWords>();
        services.AddSingleton<FirstJob>();
        services.AddSingleton<JobDesks>();
        services.AddSingleton<ShopWords>();
        services.AddSingleton<SupplyAnswers>();
        services.AddSingleton<TakeStepReading>();
        services.AddSingleton<StartPractice>();
        services.AddSingleton<PracticeRounds>();
    }

    private static void AddPapers(IServiceCollection services)
    {
        services.AddSingleton<EnterOnTimeline>();
        services.AddSingleton<BookIn>();
        services.AddSingleton<SearchBook>();
        services.AddSingleton<ReadBoard>();
        services.AddSingleton<ReadReminders>();
        services.AddSingleton<ReadCustomer>();
        services.AddSingleton<ReadJobFile>();
        services.AddSingleton<GiveQuote>();
        services.AddSingleton<IssueInvoice>();
        services.AddSingleton<CreditInvoice>();
        services.AddSingleton<StopTimer>();
        services.AddSingleton<PrintPaper>();
        services.AddSingleton<DraftReport>();
        services.AddSingleton<ChangeRules>();
        services.AddSingleton<AddPhoto>();
        services.AddSingleton<ReadPhoto>();
        services.AddSingleton<StockWriter>();
        services.AddSingleton<AddStockItem>();
        services.AddSingleton<ReceiveStock>();
        services.AddSingleton<CountStock>();
        services.AddSingleton<ChangeStockItem>();
        services.AddSingleton<TakeFromStock>();
        services.AddSingleton<ReceiveParts>();
        services.AddSingleton<FitPart>();
        services.AddSingleton<FindBins>();
        services.AddSingleton<ChooseLogo>();
        services.AddSingleton<ReadStock>();
        services.AddSingleton<ReadLookBack>();
    }

    private static void AddPeople(IServiceCollection services)
    {
        services.AddSingleton<SignIn>();
        services.AddSingleton<ChangePeople>();
        services.AddSingleton<ShopPeople>();
        services.AddScoped<CircuitHandler, PersonAtThePage>();
    }

    private static void AddWriting(IServiceCollection services, string dataPath)
    {
        var drafts = Path.Combine(Path.GetDirectoryName(dataPath)!, "drafts");
        services.AddSingleton(new DraftShelf(drafts, TimeProvider.System));
        services.AddSingleton<ReadTyped>();
        services.AddSingleton<ReadVersions>();
        services.AddSingleton<SaveSheet>();
        services.AddSingleton<DrawTyped>();
        services.AddSingleton<CompareVersions>();
        services.AddSingleton<ListSheets>();
    }

    private static void AddKeeping(IServiceCollection services, string dataPath)
    {
        services.AddSingleton<IShopCopies>(new SqliteCopies(dataPath));
        services.AddSingleton(new BackupFolder(Path.Combine(Path.GetDirectoryName(dataPath)!, "backups")));
        services.AddSingleton<BackupShop>();
        services.AddSingleton<NightlyBackups>();
        services.AddHostedService<NightWork>();
    }

    /// <summary>Nothing from outside may run in the page, and no other page may frame it. The text editor sets its tab width as a style of one element.</summary>
    /// <summary>What was posted is not posted a second time to the page that says it was refused.</summary>
    private static Task RefusePlainlyAsync(HttpContext context, RequestDelegate next)
    {
        if (!HttpMethods.IsGet(context.Request.Method) && context.Features.Get<IStatusCodePagesFeature>() is { } pages)
        {
            pages.Enabled = false;
        }

        return next(context);
    }

    private static Task AddSafeHeaders(HttpContext context, RequestDelegate next)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy =
            "default-src 'self'; style-src-attr 'unsafe-inline'; img-src 'self' data:; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        return next(context);
    }
}
