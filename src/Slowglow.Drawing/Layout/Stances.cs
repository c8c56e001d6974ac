using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transistor;

namespace Slowglow.Drawing.Layout;

/// <summary>The poses in which a symbol may stand in a strip, with what a drawing thinks of each.</summary>
internal sealed class Stances(NetRoles roles, Func<string, int> depth, StripNets nets)
{
    /// <summary>Amperes above which a resistor is seen as carrying a stage's current, so that it stands. Common practice, no source.</summary>
    private const double StandingCurrent = 30e-6;

    /// <summary>Volts below chassis at which a net is drawn below it.</summary>
    private const double Clear = 0.5;

    public IReadOnlyList<Stance> Of(Symbol symbol) =>
        [
            .. Poses(symbol)
                .SelectMany(p => Tied(symbol, p).Select(t => new Stance(symbol, p, t.Ties, Penalty(symbol, p) + t.Penalty))),
        ];

    private static IEnumerable<Pose> Poses(Symbol symbol) =>
        symbol.Turning switch
        {
            Turning.Quarter => [new(0), new(1), new(2), new(3)],
            Turning.Mirror => [new(), new(0, true)],
            Turning.Flip => [new(), new(0, true), new(0, false, true), new(0, true, true)],
            _ => [new()],
        };

    /// <summary>Rails are reached by their line where the pin looks that way, or else by a tag.</summary>
    private IEnumerable<(IReadOnlyList<PinTie> Ties, double Penalty)> Tied(Symbol symbol, Pose pose)
    {
        PinTie[] ties = [.. symbol.Pins.Select(p => symbol is TagSymbol ? PinTie.Wire : nets.TieOf(p))];
        var lines = symbol.Pins.Select((p, i) => ties[i] == PinTie.RailLine && LooksAtLine(p, pose)).ToArray();
        var tagged = ties.Select(t => t == PinTie.RailLine ? PinTie.Tag : t).ToArray();
        if (lines.Any(l => l))
        {
            yield return ([.. ties.Select((t, i) => lines[i] ? t : tagged[i])], 0);
        }

        yield return (tagged, 4 * lines.Count(l => l));
    }

    private bool LooksAtLine(SymbolPin pin, Pose pose) =>
        pose.Apply(pin.Out) == (roles.IsBelow(pin.Net) ? Heading.Down : Heading.Up);

    private double Penalty(Symbol symbol, Pose pose) =>
        symbol switch
        {
            { IsTwoEnded: true } => OfTwoEnded(symbol, pose),
            PotSymbol => HigherOnTop(symbol.Pins[0].Net, symbol.Pins[2].Net, pose.Inverted, 12) + (pose.Mirrored ? 2 : 0),
            TransistorSymbol or FieldEffectSymbol => HigherOnTop(symbol.Pins[0].Net, symbol.Pins[2].Net, pose.Inverted, 40)
                + (pose.Mirrored ? 4 : 0),
            TagSymbol => pose.IsTurned ? 1.5 : 0,
            ConnectorSymbol => IsLateConnector(symbol) == pose.Mirrored ? 0 : 12,
            OpAmpSymbol => (pose.Mirrored ? 14 : 0) + (pose.Inverted ? 0.5 : 0),
            GasRegulatorSymbol or RectifierValveSymbol => HigherOnTop(symbol.Pins[0].Net, symbol.Pins[^1].Net, pose.Inverted, 8)
                + (pose.Mirrored ? 1 : 0),
            RegulatorSymbol => (pose.Mirrored ? 12 : 0) + (pose.Inverted ? 12 : 0),
            BoxSymbol => 0,
            _ => pose.Mirrored ? 4 : 0,
        };

    private bool IsLateConnector(Symbol symbol) => nets.IsOutgoing(symbol.Pins[0].Net);

    private double OfTwoEnded(Symbol symbol, Pose pose)
    {
        // Quarters 0: first end on top; 1: first end to the right; 2: second end on top; 3: first end to the left.
        var (first, second) = (symbol.Pins[0].Net, symbol.Pins[1].Net);
        var standing = Stands(symbol, first, second);
        if (pose.IsTurned)
        {
            var leftNet = pose.Quarters == 3 ? first : second;
            var rightNet = pose.Quarters == 3 ? second : first;
            return (standing ? 14 : 0)
                + (depth(leftNet) > depth(rightNet) && (nets.IsSupplyStrip || !roles.IsSupply(rightNet)) ? 5 : 0);
        }

        return (standing ? 0 : 5) + HigherOnTop(first, second, pose.Quarters == 2, 16);
    }

    /// <summary>What hangs on chassis or a rail stands, and so does what carries a stage's current; what couples lies.</summary>
    private bool Stands(Symbol symbol, string first, string second)
    {
        if (nets.IsSupplyStrip)
        {
            return first == NetTable.Ground || second == NetTable.Ground || symbol is DiodeSymbol;
        }

        if (roles.IsSupply(first) || roles.IsSupply(second))
        {
            return true;
        }

        var drop = Math.Abs(roles.Height(first) - roles.Height(second));
        return symbol.Part switch
        {
            ResistorPart resistor => drop > 0.5 && drop / resistor.Ohms > StandingCurrent,
            CapacitorPart => false,
            _ => drop > 20,
        };
    }

    private double HigherOnTop(string top, string bottom, bool inverted, double weight)
    {
        var (high, low) = inverted ? (bottom, top) : (top, bottom);
        if (low == NetTable.Ground && !(roles.Height(high) < -Clear))
        {
            return 0;
        }

        if (high == NetTable.Ground)
        {
            return roles.Height(low) < -Clear ? 0 : weight;
        }

        var rise = roles.Height(high) - roles.Height(low);
        return rise < -0.02 ? weight
            : double.IsNaN(rise) || rise < 0.02 ? (inverted ? 0.5 : 0)
            : 0;
    }
}
