using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Circuits.Checks;

/// <summary>Windings joined in a ring whose volts do not cancel: a short circuit by drawing.</summary>
internal static class SourceLoops
{
    private const double AllowedShare = 0.02;

    public static IEnumerable<Finding> Of(Sheet sheet)
    {
        var volts = new Dictionary<string, (string Root, double Volts)>();
        foreach (var part in sheet.Parts.Where(p => p is WirePart or FusePart))
        {
            Join(volts, part.Pins[0].Net, part.Pins[1].Net, 0);
        }

        Join(volts, NetTable.Neutral, NetTable.Ground, 0);
        foreach (var part in sheet.Parts.OfType<TransformerPart>().Where(t => !t.IsOutput))
        {
            foreach (var winding in part.Windings)
            {
                if (LoopVolts(volts, part, winding) is { } left)
                {
                    yield return Describe(part, winding, left);
                }
            }
        }
    }

    /// <summary>Lays a winding's sections; the volts left over when its ends were already joined, or null.</summary>
    private static double? LoopVolts(Dictionary<string, (string Root, double Volts)> volts, TransformerPart part, Winding winding)
    {
        double? left = null;
        for (var s = 0; s < winding.SectionVolts.Count; s++)
        {
            var (a, b) = (part.NetOf(winding.Pins[s])!, part.NetOf(winding.Pins[s + 1])!);
            var (ra, va) = Root(volts, a);
            var (rb, vb) = Root(volts, b);
            if (ra != rb)
            {
                Join(volts, a, b, winding.SectionVolts[s]);
            }
            else if (Math.Abs(va - vb - winding.SectionVolts[s]) > AllowedShare * winding.SectionVolts[s])
            {
                left = va - vb - winding.SectionVolts[s];
            }
        }

        return left;
    }

    /// <summary>Potential of a net over the root of its group.</summary>
    private static (string Root, double Volts) Root(Dictionary<string, (string Root, double Volts)> volts, string net)
    {
        double sum = 0;
        while (volts.TryGetValue(net, out var up))
        {
            sum += up.Volts;
            net = up.Root;
        }

        return (net, sum);
    }

    /// <summary>Says that a stands so many volts above b.</summary>
    private static void Join(Dictionary<string, (string Root, double Volts)> volts, string a, string b, double difference)
    {
        var (ra, va) = Root(volts, a);
        var (rb, vb) = Root(volts, b);
        if (ra != rb)
        {
            volts[ra] = (rb, difference - va + vb);
        }
    }

    private static Finding Describe(Part part, Winding winding, double left) =>
        new(
            Severity.Error,
            part.Place,
            $"winding {winding.Name} of {part.Designator} is joined into a loop of sources in which {Quantities.Engineering.Format(Math.Abs(left), "V")} are left over",
            "check the pins of the windings and the wires between them: parallel windings need equal volts and the same sense",
            part.Designator
        );
}
