using Slowglow.Sheets.Devices;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>A pentode's constants as its law wants them, with those that its data may leave out.</summary>
internal static class PentodeConstants
{
    private static readonly string[] Named = ["mu", "ex", "kg1", "kg2", "kp", "kvb", "ks", "gg", "cg", "xi"];

    public static double[] Of(Device device)
    {
        var pull = device.Law.TryGetValue("mua", out var mua) ? 1 / mua : 0;
        var share = device.Law.GetValueOrDefault("kns");
        var perDrive = device.Law.GetValueOrDefault("kne");
        var volts = share > 0 || perDrive > 0 ? 0 : device["kvb"];
        return [.. Named.Select(n => device[n]), pull, volts, share, perDrive, device.Law.GetValueOrDefault("back"), 1];
    }
}
