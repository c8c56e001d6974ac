using System.Globalization;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Source;

/// <summary>Text that is equal for setups in which the bench stands the same way, whatever they are called.</summary>
internal static class SetupKey
{
    public static string Of(Setup setup) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{setup.MainsVolts}|{setup.LimiterWatts}|{setup.PowerOff}|{setup.ValvesOut}|{Join(setup.Pulled)}|"
                + $"{Join(setup.Switches.Select(p => p.Key + "=" + p.Value))}|"
                + $"{Join(setup.Controls.Select(p => p.Key + "=" + p.Value.ToString(CultureInfo.InvariantCulture)))}|"
                + $"{setup.LoadOhms}|{Join(setup.Lifted)}|{setup.Input}|{setup.Channel}"
        );

    private static string Join(IEnumerable<string> items) => string.Join(",", items.Order(StringComparer.Ordinal));
}
