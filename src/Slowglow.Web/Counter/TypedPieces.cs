using System.Globalization;
using Slowglow.Sheets;

namespace Slowglow.Web.Counter;

/// <summary>Pieces and costs while they are being typed.</summary>
internal static class TypedPieces
{
    public static IReadOnlyList<Finding> Unread { get; } =
    [new(Severity.Error, Place.None, "Pieces or cost cannot be read.", "Pieces as a whole number, the cost as 12.50")];

    public static int? Read(string typed) =>
        int.TryParse(typed.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var pieces) ? pieces : null;
}
