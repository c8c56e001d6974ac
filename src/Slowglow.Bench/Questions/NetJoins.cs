using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Wire;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Which nets are one piece of copper while every wire is whole. Ground stands for its whole group.</summary>
internal sealed class NetJoins
{
    /// <summary>How a jack stands that the sheet lists no positions for.</summary>
    private const string LeadOut = "out";

    private readonly Dictionary<string, string> parents = [];

    private NetJoins(Sheet sheet, Func<Part, bool> joins)
    {
        foreach (var part in sheet.Parts.Where(p => joins(p) && p.Pins.Count == 2))
        {
            Join(part.Pins[0].Net, part.Pins[1].Net);
        }
    }

    /// <summary>Nets joined by wires alone.</summary>
    public static NetJoins ByWires(Sheet sheet) => new(sheet, p => p is WirePart);

    /// <summary>Nets joined by wires, good fuses, and the contacts that are closed in the setup.</summary>
    public static NetJoins In(Setup setup, Sheet sheet) =>
        new(sheet, p => p is WirePart or FusePart || (p is ContactPart contact && IsClosed(contact, sheet, setup)));

    /// <summary>True when the switch or jack of the contact stands where the contact closes; the first position is the default.</summary>
    public static bool IsClosed(ContactPart contact, Sheet sheet, Setup setup)
    {
        var position =
            setup.Switches.GetValueOrDefault(contact.SwitchName)
            ?? sheet.Switches.FirstOrDefault(s => s.Name == contact.SwitchName)?.Positions.FirstOrDefault()
            ?? LeadOut;
        return position == contact.Position;
    }

    /// <summary>The net that stands for the group.</summary>
    public string Of(string net)
    {
        while (parents.TryGetValue(net, out var parent))
        {
            net = parent;
        }
        return net;
    }

    /// <summary>True for ground and everything joined to it.</summary>
    public bool IsGround(string net) => Of(net) == NetTable.Ground;

    private void Join(string a, string b)
    {
        var first = Of(a);
        var second = Of(b);
        if (first == second)
        {
            return;
        }

        var (root, child) = second == NetTable.Ground ? (second, first) : (first, second);
        parents[child] = root;
    }
}
