using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Relay;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>How relays stand in a world, said as the setup says switches, for what reads the drawing.</summary>
internal static class RelayStands
{
    /// <summary>The setup with every relay that it leaves alone where its coil's volts have put it.</summary>
    public static Setup In(Setup setup, Sheet sheet, World world)
    {
        var switches = new Dictionary<string, string>(setup.Switches);
        foreach (var relay in sheet.Parts.OfType<RelayPart>().Select(r => r.Designator))
        {
            if (!switches.ContainsKey(relay) && world.HasPulledIn(relay) is { } pulledIn)
            {
                switches[relay] = pulledIn ? "on" : "off";
            }
        }

        return setup with
        {
            Switches = switches,
        };
    }
}
