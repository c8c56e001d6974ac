using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Cli.Tables;

/// <summary>Says how the bench stands.</summary>
internal static class SetupLine
{
    /// <summary>"slow: 110 V mains, 40 W limiter, valves out".</summary>
    public static string Say(Setup setup, Sheet sheet)
    {
        var keys = string.Join(", ", Keys(setup, sheet));
        return setup.Name.Contains('=') ? keys : $"{setup.Name}: {keys}";
    }

    private static IEnumerable<string> Keys(Setup setup, Sheet sheet)
    {
        yield return setup.PowerOff ? "power off" : $"{Figures.Say(setup.MainsVolts ?? sheet.Mains.Volts, "V")} mains";
        if (setup.LimiterWatts is { } watts)
        {
            yield return $"{Engineering.Format(watts, "W")} limiter lamp";
        }

        if (setup.ValvesOut)
        {
            yield return "valves out";
        }

        if (setup.Pulled.Count > 0)
        {
            yield return $"{string.Join(", ", setup.Pulled)} pulled";
        }

        if (setup.Lifted.Count > 0)
        {
            yield return $"leg lifted: {string.Join(", ", setup.Lifted)}";
        }

        foreach (var (name, position) in setup.Switches)
        {
            yield return $"{name} at {position}";
        }

        foreach (var (name, rotation) in setup.Controls)
        {
            yield return $"{name} at {Figures.Percent(rotation)}";
        }

        if (setup.Input != InputState.Open)
        {
            yield return setup.Input == InputState.Shorted ? "input shorted" : "generator connected";
        }

        if (setup.LoadOhms is { } load)
        {
            yield return double.IsFinite(load) ? $"{Engineering.Format(load, "ohm")} load" : "no load";
        }
    }
}
