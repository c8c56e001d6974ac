using Slowglow.Circuits;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Writes the cards of parts, one family of parts to a class.</summary>
internal abstract class PartCards
{
    public const double OpenOhms = 1e12;
    public const double ShortOhms = 0.1;
    public const double JoinOhms = 0.01;

    /// <summary>Writes the part if it is of this family; false when it is not.</summary>
    public abstract bool Write(Deck deck, Part part, FaultsOf faults, Bench bench);

    /// <summary>Nodes of a multiple device's electrodes, for each section.</summary>
    protected static IEnumerable<(int Section, Func<string, string> Node)> Sections(Deck deck, Part part, Device device)
    {
        foreach (var section in device.Pinout.Select(p => p.Section).Where(s => s > 0).Distinct().Order())
        {
            yield return (section, electrode => deck.Node(NetOf(part, device, section, electrode)));
        }
    }

    protected static string NetOf(Part part, Device device, int section, string electrode)
    {
        var pin =
            device.Pinout.FirstOrDefault(p => p.Section == section && p.Electrode == electrode)
            ?? device.Pinout.FirstOrDefault(p => p.Section == 0 && p.Electrode == electrode)
            ?? throw new InvalidOperationException($"{part.Designator} has no {electrode} in section {section}.");
        return part.Pins.First(p => p.Number == pin.Number).Net;
    }

    /// <summary>The resistance between pairs of electrodes of one letter each: next to none, a leak, a short.</summary>
    protected static void WriteLeaks(
        Deck deck,
        string part,
        IReadOnlyDictionary<string, string> nodes,
        FaultsOf faults,
        params string[] pairs
    )
    {
        foreach (var pair in pairs)
        {
            var leak = faults.Has(FailureMode.Short, pair) ? ShortOhms : faults.Severity(FailureMode.Leaky, OpenOhms, pair);
            deck.Resistor(part + pair.Replace("-", "", StringComparison.Ordinal), nodes[pair[..1]], nodes[pair[2..]], leak);
        }
    }
}
