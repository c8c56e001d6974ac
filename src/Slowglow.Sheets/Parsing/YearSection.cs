using System.Globalization;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>The year a unit was made.</summary>
internal static class YearSection
{
    private const int Earliest = 1900;
    private const int Latest = 2100;

    internal static int? Read(YamlScalar? scalar, FindingList findings)
    {
        if (scalar is null)
        {
            return null;
        }

        if (
            int.TryParse(scalar.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var year)
            && year is >= Earliest and <= Latest
        )
        {
            return year;
        }

        findings.Error(scalar.Place, $"'{scalar.Text}' is not a year", "write the year it was made in four digits: year: 1964");
        return null;
    }
}
