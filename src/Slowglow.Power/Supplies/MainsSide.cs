using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Power.Supplies;

/// <summary>What of a sheet hangs on the mains directly.</summary>
public sealed class MainsSide
{
    private readonly Sheet sheet;
    private readonly HashSet<string> live = [];

    private MainsSide(Sheet sheet) => this.sheet = sheet;

    public SupplyKind Kind { get; private set; }

    /// <summary>Transformers whose primary hangs on the mains.</summary>
    public IReadOnlyList<TransformerPart> Transformers { get; private set; } = [];

    public static MainsSide Of(Sheet sheet)
    {
        var side = new MainsSide(sheet);
        side.Look();
        return side;
    }

    /// <summary>What is not advised on for this supply; null for one with a mains transformer.</summary>
    public string? Refusal =>
        Kind switch
        {
            SupplyKind.SwitchedMode =>
                "This unit has a switched-mode supply: it starts at its own volts, draws the more current the lower the mains, and its primary side "
                    + "stays charged. A lamp limiter or a variable transformer tells nothing reliable of it, and its transformer cannot be designed here.",
            SupplyKind.Transformerless =>
                "This unit has no mains transformer: its rails, perhaps its chassis, hang on the mains. It may only be worked on behind an isolation "
                    + "transformer by people trained for it, and nothing is advised on here.",
            SupplyKind.NoMains => "The sheet draws no mains inlet: name MAINS.L and MAINS.N where the lead comes in.",
            _ => null,
        };

    private void Look()
    {
        if (sheet.Nets.Find(NetTable.Live) is not { } l || sheet.Nets.Find(NetTable.Neutral) is not { } n)
        {
            Kind = SupplyKind.NoMains;
            return;
        }

        live.UnionWith([l, n]);
        Spread(p => Passes(p));
        Transformers = [.. sheet.Parts.OfType<TransformerPart>().Where(t => !t.IsOutput && OnMains(t))];
        if (Transformers.Count > 0)
        {
            return;
        }

        Spread(p => Passes(p) || p is DiodePart or CapacitorPart);
        var switched = sheet.Parts.OfType<TransformerPart>().Any(OnMains) && sheet.Parts.OfType<TransistorPart>().Any();
        Kind = switched ? SupplyKind.SwitchedMode : SupplyKind.Transformerless;
    }

    private bool OnMains(TransformerPart part) =>
        part.Windings.Any(w => w.IsPrimary && w.Pins.Any(p => part.NetOf(p) is { } net && live.Contains(net)));

    private static bool Passes(Part p) => p is WirePart or FusePart or ContactPart or LampPart or ResistorPart or InductorPart;

    /// <summary>Follows those parts from the mains on, never through the chassis.</summary>
    private void Spread(Func<Part, bool> through)
    {
        var grown = true;
        while (grown)
        {
            grown = false;
            foreach (var part in sheet.Parts.Where(through).Where(p => p.Pins.Any(pin => live.Contains(pin.Net))))
            {
                grown |= part.Pins.Where(p => p.Net != NetTable.Ground).Count(p => live.Add(p.Net)) > 0;
            }
        }
    }
}
