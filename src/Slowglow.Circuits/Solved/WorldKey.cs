using System.Globalization;
using Slowglow.Sheets.Setups;

namespace Slowglow.Circuits.Solved;

/// <summary>Names a setup or a set of faults by what matters electrically, so that solved worlds can be found again.</summary>
internal static class WorldKey
{
    /// <param name="ratedVolts">Mains volts where the setup says nothing.</param>
    public static string Of(Setup setup, double ratedVolts)
    {
        static string Number(double? v) => v?.ToString("R", CultureInfo.InvariantCulture) ?? "";
        IEnumerable<string> parts =
        [
            Number(setup.MainsVolts ?? ratedVolts),
            Number(setup.LimiterWatts),
            setup.PowerOff ? "off" : "on",
            setup.ValvesOut ? "out" : "in",
            string.Join(' ', setup.Pulled.Order(StringComparer.Ordinal)),
            string.Join(' ', setup.Switches.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key}={s.Value}")),
            string.Join(
                ' ',
                setup.Controls.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => $"{c.Key}={Number(c.Value)}")
            ),
            Number(setup.LoadOhms),
            string.Join(' ', setup.Lifted.Order(StringComparer.Ordinal)),
            setup.Input.ToString(),
            setup.LoadOhms is null && setup.Input == InputState.Open ? "" : setup.Channel ?? "",
        ];
        return string.Join('|', parts);
    }

    public static string Of(IReadOnlyList<Fault> faults) =>
        string.Join(
            '|',
            faults
                .Select(f => $"{f.Part};{f.Where};{f.Mode};{f.Severity.ToString("R", CultureInfo.InvariantCulture)}")
                .Order(StringComparer.Ordinal)
        );
}
