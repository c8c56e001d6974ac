using System.Globalization;
using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Papers;

/// <summary>How days and figures stand on papers.</summary>
/// <param name="DayShape">One of <see cref="DayShapes"/>.</param>
/// <param name="NumberShape">One of <see cref="NumberShapes"/>: how a thousand, two hundred and thirty-four and a half is written.</param>
public sealed record PaperFormat(string DayShape, string NumberShape)
{
    private const char Unbroken = '\u00a0';

    public static IReadOnlyList<string> DayShapes { get; } =
    ["d MMMM yyyy", "dd.MM.yyyy", "dd/MM/yyyy", "MM/dd/yyyy", "yyyy-MM-dd"];

    public static IReadOnlyList<string> NumberShapes { get; } = ["1,234.50", "1.234,50", "1 234,50", "1'234.50", "1234.50"];

    public static PaperFormat Usual { get; } = new(DayShapes[0], NumberShapes[0]);

    public bool IsKnown => DayShapes.Contains(DayShape) && NumberShapes.Contains(NumberShape);

    private NumberFormatInfo Numbers =>
        new()
        {
            NumberDecimalSeparator = NumberShape[^3].ToString(),
            NumberGroupSeparator =
                char.IsDigit(NumberShape[1]) ? ""
                : NumberShape[1] == ' ' ? Unbroken.ToString()
                : NumberShape[1].ToString(),
        };

    public string Day(DateOnly day) => day.ToString(DayShape, CultureInfo.InvariantCulture);

    /// <summary>Two decimals, or the three that some currencies have.</summary>
    public string Figure(decimal figure) => figure.ToString("#,##0.00#", Numbers);

    public string Quantity(decimal figure) => figure.ToString("0.##", Numbers);

    public string Percent(decimal percent) => percent.ToString("0.##", Numbers) + " %";

    public string Say(Amount amount) => $"{Figure(amount.Figure)} {amount.Currency}";
}
