using System.Globalization;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Jobs;

/// <summary>Writes a setup's keys as a readings document has them: <c>mains: 110 V, limiter: 40 W, valves: out</c>.</summary>
public static class SetupKeys
{
    public static string Write(Setup setup) => string.Join(", ", Keys(setup));

    /// <summary>For people: "110 V mains, 40 W limiter, valves out"; "as it stands on the bench" when nothing is changed.</summary>
    public static string Say(Setup setup)
    {
        var written = Write(setup);
        return written.Length == 0
            ? "the sheet's mains, nothing pulled or lifted"
            : written.Replace(":", "", StringComparison.Ordinal);
    }

    private static IEnumerable<string> Keys(Setup setup)
    {
        if (setup.MainsVolts is { } mains)
        {
            yield return $"mains: {Figure(mains)} V";
        }

        if (setup.LimiterWatts is { } watts)
        {
            yield return $"limiter: {Figure(watts)} W";
        }

        if (setup.PowerOff)
        {
            yield return "power: off";
        }

        if (setup.ValvesOut)
        {
            yield return "valves: out";
        }

        foreach (var key in Lists(setup).Concat(Positions(setup)))
        {
            yield return key;
        }
    }

    private static IEnumerable<string> Lists(Setup setup)
    {
        if (setup.Pulled.Count > 0)
        {
            yield return $"pulled: [{string.Join(", ", setup.Pulled)}]";
        }

        if (setup.Lifted.Count > 0)
        {
            yield return $"lifted: [{string.Join(", ", setup.Lifted)}]";
        }
    }

    private static IEnumerable<string> Positions(Setup setup)
    {
        foreach (var (name, position) in setup.Switches)
        {
            yield return $"{name}: {position}";
        }

        foreach (var (name, rotation) in setup.Controls)
        {
            yield return $"{name}: {Figure(rotation * 100)} %";
        }

        if (setup.LoadOhms is { } load)
        {
            yield return double.IsInfinity(load) ? "load: none" : $"load: {Figure(load)} ohm";
        }

        if (setup.Input != InputState.Open)
        {
            yield return setup.Input == InputState.Shorted ? "input: shorted" : "input: driven";
        }

        if (setup.Channel is { } channel)
        {
            yield return $"channel: {channel}";
        }
    }

    private static string Figure(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
