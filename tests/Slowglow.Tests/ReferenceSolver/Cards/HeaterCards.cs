using System.Globalization;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Heaters where they are wired: rated volts over rated amperes, in two halves where there is a tap.</summary>
internal static class HeaterCards
{
    public static void Write(Deck deck, ValvePart valve, bool open)
    {
        List<string> ends = [.. NodesOf(deck, valve, "h"), .. NodesOf(deck, valve, "f")];
        if (ends.Count == 1)
        {
            // A filament is its own cathode.
            ends.AddRange(NodesOf(deck, valve, "k").Take(1));
        }

        var tap = NodesOf(deck, valve, "ht");
        if (ends.Count != 2 || !valve.Device.Limits.TryGetValue("heaterVolts", out var volts))
        {
            return;
        }

        var ohms = volts / valve.Device.Limits["heaterAmps"];
        if (tap.Count == 0)
        {
            Add(deck, valve, 0, ends[0], ends[1], open ? PartCards.OpenOhms : ohms);
            return;
        }

        Add(deck, valve, 0, ends[0], tap[0], open ? PartCards.OpenOhms : 2 * ohms);
        Add(deck, valve, 1, tap[0], ends[1], open ? PartCards.OpenOhms : 2 * ohms);
    }

    private static List<string> NodesOf(Deck deck, ValvePart valve, string electrode) =>
        [
            .. valve
                .Device.Pinout.Where(p => p.Electrode == electrode)
                .Select(p => deck.Node(valve.Pins.First(q => q.Number == p.Number).Net)),
        ];

    private static void Add(Deck deck, ValvePart valve, int half, string one, string other, double ohms) =>
        deck.Resistor(valve.Designator + "heater" + half.ToString(CultureInfo.InvariantCulture), one, other, ohms);
}
