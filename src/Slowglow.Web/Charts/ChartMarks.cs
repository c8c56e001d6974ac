using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Components;

namespace Slowglow.Web.Charts;

/// <summary>What every chart on the page writes: figures for paths, and words at a place.</summary>
internal static class ChartMarks
{
    /// <summary>A coordinate, to a tenth of a unit of the drawing.</summary>
    public static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A text element as it is: written as a tag, it would be taken for one of the page's own language.</summary>
    /// <param name="anchor">"start", "middle" or "end".</param>
    /// <param name="style">Class in the style sheet; empty for none.</param>
    public static MarkupString Text(string style, double x, double y, string anchor, string said) =>
        (MarkupString)
            $"<text{(style.Length > 0 ? $" class=\"{style}\"" : "")} x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\">{WebUtility.HtmlEncode(said)}</text>";
}
