using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Papers;
using Slowglow.Sheets;
using Slowglow.Web.Bench;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Web.Papers;

/// <summary>A card of the paper side of a job. What was typed stays until it is stored.</summary>
public abstract class PaperComponent : BenchComponent
{
    [CascadingParameter]
    protected JobFile File { get; set; } = null!;

    [CascadingParameter(Name = "By")]
    protected string? By { get; set; }

    [Inject]
    protected EnterOnTimeline Enter { get; set; } = null!;

    [Inject]
    protected TimeProvider Clock { get; set; } = null!;

    protected IReadOnlyList<Finding> Wrong { get; set; } = [];

    protected string Currency => File.Rules.Currency;

    protected bool IsReady => RendererInfo.IsInteractive;

    /// <summary>True when it was stored; otherwise <see cref="Wrong"/> says why not.</summary>
    protected async Task<bool> EnterAsync(Func<TimelineEntry> entry) => Took(await Enter.RunAsync(File.Job.Number, entry, By));

    protected bool Took<T>(Parsed<T> answer)
        where T : class
    {
        Wrong = answer.Findings;
        return answer.Value is not null;
    }

    /// <summary>Reads a typed figure; says so when it is none.</summary>
    protected decimal? Figure(string typed, string what)
    {
        var figure = TypedFigure.Read(typed);
        if (figure is null)
        {
            Refuse($"\"{Short(typed)}\" is no figure for {what}.", "12.50");
        }

        return figure;
    }

    /// <summary>Null for an empty field; says so when something else than an amount was typed.</summary>
    protected bool Optional(string typed, string what, out decimal? figure)
    {
        figure = typed.Trim().Length == 0 ? null : Figure(typed, what);
        return typed.Trim().Length == 0 || figure is not null;
    }

    protected int? Whole(string typed, string what)
    {
        if (int.TryParse(typed.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var figure))
        {
            return figure;
        }

        Refuse($"\"{Short(typed)}\" is no whole number for {what}.", "1, 2, 30");
        return null;
    }

    protected void Refuse(string text, string remedy) => Wrong = [new(Severity.Error, Place.None, text, remedy)];

    protected string Paper(string what) => $"/job/{File.Job.Number}/papers/{what}.pdf";

    private static string Short(string typed) => typed.Length > 40 ? typed[..40] + "..." : typed;
}
