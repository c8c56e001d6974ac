using System.Globalization;
using System.Text;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Devices.Agreement;

/// <summary>docs/valve-agreement.md: every published valve figure beside the computed one.</summary>
internal static class AgreementPage
{
    private const string Head = """
        # Valves: published and computed

        Every valve figure under `tests/reference` that somebody read in a source, beside what the program computes for the same
        conditions, the worst first. Made by the tests; do not edit by hand. To make it again:

        ```
        dotnet build -c Release tests/Slowglow.Tests
        SLOWGLOW_WRITE_PAGES=1 dotnet exec tests/Slowglow.Tests/bin/Release/net10.0/Slowglow.Tests.dll -class "Slowglow.Tests.Devices.ValveAgreementTests"
        ```

        "Fitted" says whether the constants of the library were fitted to the row: yes, in part (every other row of that table), or no.
        Rows kept out of the fit are the ones that prove something. Rows that nobody checked (`memory`), the EF86 sheet of 1956 (another
        valve in all but name) and output stages whose drive is not stated are left out; class AB1 without a drive is taken as driven
        until the grids reach the cathode, which is what the 1 means.

        What the laws are known not to do: the current below cut-off falls off more slowly than the valve's (rows at 0.01 and 1 mA); the
        anode resistance of the EL34, fitted to one point, comes out of one arctangent; that of the other pentodes has the anode's own field besides.
        The share of the space current that a 6V6GT's screen takes falls towards cut-off more steeply than the law has it, and less when driven.
        The EL84 at 0.3 V of drive gives 0.05 W into 4500 and into 5200 ohms by its maker, who rounds both figures.
        Two stages are set up as their rows describe them besides the figures: screens behind 3 kilohms with a bleeder (6V6GT at 315 V), and
        currents at rest beside the watts of a driven stage (6V6GT triode-connected in pairs).
        The KT66 ultra-linear row is said by its own source not to go with the set that the valve was fitted to.

        """;

    public static string Path => System.IO.Path.Combine(Repository.Root, "docs", "valve-agreement.md");

    /// <summary>Rows as the page has them, worst first.</summary>
    public static IEnumerable<AgreementRow> WorstFirst(IEnumerable<AgreementRow> rows) =>
        rows.OrderByDescending(r => Math.Abs(Math.Log(r.Computed / r.Published))).ThenBy(r => r.Key, StringComparer.Ordinal);

    public static string Write(IReadOnlyList<AgreementRow> rows)
    {
        var page = new StringBuilder(Head.Replace("\r", "", StringComparison.Ordinal));
        page.Append(Summary(rows)).Append('\n');
        page.Append("| valve | what | published | computed | error | fitted | conditions | source |\n");
        page.Append("| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var row in WorstFirst(rows))
        {
            page.Append(Line(row)).Append('\n');
        }

        return page.ToString();
    }

    /// <summary>The whole table in a line for each kind of figure: how many lie within a tenth.</summary>
    private static string Summary(IReadOnlyList<AgreementRow> rows)
    {
        var text = new StringBuilder(
            "| figures | rows | within 10 % | median error | kept out of the fit | of these within 10 % |\n"
        );
        text.Append("| --- | --- | --- | --- | --- | --- |\n");
        foreach (var group in rows.GroupBy(r => (r.Table, r.Quantity)))
        {
            var kept = group.Where(r => r.Fitted == "no").ToList();
            var errors = group.Select(r => Math.Abs(r.Error)).Order().ToList();
            text.Append(
                CultureInfo.InvariantCulture,
                $"| {group.Key.Quantity}, `{group.Key.Table}` | {errors.Count} | {errors.Count(e => e <= 0.1)} | {errors[errors.Count / 2] * 100:F1} % | {kept.Count} | {kept.Count(r => Math.Abs(r.Error) <= 0.1)} |\n"
            );
        }

        return text.ToString();
    }

    public static string Line(AgreementRow row) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"| {row.Valve} | {row.Quantity} | {row.Published:G6} | {row.Computed:G4} | {row.Error * 100:+0.0;-0.0} % | {row.Fitted} | {row.Conditions.Replace('_', ' ')} | {row.Source} |"
        );
}
