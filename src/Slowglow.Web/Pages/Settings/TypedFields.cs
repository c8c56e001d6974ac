using System.Globalization;
using Slowglow.Sheets;
using Slowglow.Workshop.Money;

namespace Slowglow.Web.Pages.Settings;

/// <summary>Reads typed fields one after the other and keeps what was wrong with any of them.</summary>
internal sealed class TypedFields
{
    private static readonly CultureInfo Inv = CultureInfo.InvariantCulture;
    private readonly List<Finding> wrong = [];

    public IReadOnlyList<Finding> Wrong => wrong;

    public decimal Figure(string typed, string what) => TypedFigure.Read(typed) ?? Miss(typed, what);

    /// <summary>Null for an empty field.</summary>
    public decimal? Optional(string typed, string what) => typed.Trim().Length == 0 ? null : Figure(typed, what);

    public int Whole(string typed, string what) =>
        int.TryParse(typed.Trim(), NumberStyles.AllowLeadingSign, Inv, out var figure) ? figure : (int)Miss(typed, what);

    /// <summary>Whole numbers with spaces or commas between; none for an empty field.</summary>
    public IReadOnlyList<int> Wholes(string typed, string what) =>
        [.. typed.Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries).Select(word => Whole(word, what))];

    public T? Refuse<T>(string line, string remedy)
        where T : class
    {
        wrong.Add(new(Severity.Error, Place.None, $"The line \"{Short(line)}\" cannot be read.", remedy));
        return null;
    }

    private decimal Miss(string typed, string what)
    {
        wrong.Add(new(Severity.Error, Place.None, $"\"{Short(typed)}\" is no figure for {what}.", "A number."));
        return 0;
    }

    private static string Short(string text) => text.Length > 60 ? text[..60] : text;
}
