using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.Stress;

/// <summary>A way for a unit to stand that asks something of its parts.</summary>
/// <param name="Name">"mains 10 % high, valves cold".</param>
/// <param name="Setup">How it is set.</param>
public sealed record Situation(string Name, Setup Setup)
{
    /// <summary>Highest mains over nominal.</summary>
    private const double HighMains = 1.1;
    private static readonly string[] StandbyNames = ["STANDBY", "STBY", "STAND-BY", "STAND BY"];

    /// <summary>Running at the highest mains.</summary>
    public static Situation High(Sheet sheet) =>
        new("mains 10 % high", Setup.Default with { Name = "high", MainsVolts = HighMains * sheet.Mains.Volts });

    /// <summary>All of them in words, full signal on each channel included.</summary>
    public static IReadOnlyList<string> Names(Sheet sheet) =>
        [.. Of(sheet).Select(s => s.Name), .. sheet.Signals.Select(p => FullSignal(sheet, p.Name))];

    /// <summary>How the unit is called that stands so with full signal on a channel.</summary>
    public static string FullSignal(Sheet sheet, string channel) =>
        "mains 10 % high, full signal" + (sheet.Signals.Count > 1 ? $" on {channel}" : "");

    /// <summary>Running at nominal and high mains; valves not yet drawing, or pulled; standby in either position.</summary>
    public static IReadOnlyList<Situation> Of(Sheet sheet)
    {
        var high = High(sheet);
        var volts = high.Setup.MainsVolts;
        List<Situation> all = [new("running", Setup.Default with { Name = "running" }), high];
        if (sheet.Parts.OfType<ValvePart>().Any(v => v.Device.Kind != DeviceKind.RectifierValve))
        {
            all.Add(
                new(
                    "mains 10 % high, valves cold or pulled",
                    Setup.Default with
                    {
                        Name = "cold valves",
                        MainsVolts = volts,
                        ValvesOut = true,
                    }
                )
            );
        }

        foreach (var s in sheet.Switches.Where(s => StandbyNames.Contains(s.Name.ToUpperInvariant())))
        {
            all.AddRange(
                s.Positions.Skip(1)
                    .Select(p => new Situation(
                        $"mains 10 % high, {s.Name} {p}",
                        Setup.Default with
                        {
                            Name = p,
                            MainsVolts = volts,
                            Switches = new Dictionary<string, string> { [s.Name] = p },
                        }
                    ))
            );
        }

        return all;
    }
}
