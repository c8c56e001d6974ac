using System.Globalization;
using System.Text;
using Slowglow.Drawing;
using Slowglow.Sheets;
using Xunit;

namespace Slowglow.Tests.Drawing;

/// <summary>Any legal circuit is drawn: whatever hangs together how ever oddly comes back connected as the sheet says, without overlaps.</summary>
public class RandomCircuitTests
{
    private static readonly int[] Sizes = [5, 9, 15, 24, 40, 65, 100, 150];

    public static TheoryData<int, int> Cases()
    {
        TheoryData<int, int> cases = [];
        foreach (var size in Sizes)
        {
            for (var seed = 1; seed <= (size > 60 ? 1 : 4); seed++)
            {
                cases.Add(size, seed);
            }
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_random_circuit_is_drawn_as_it_is(int parts, int seed)
    {
        var random = new Random((1000 * parts) + seed);
        var read = SheetReader.Read(Circuit(parts, random));
        Assert.True(read.Value is not null, read.Findings.FirstOrDefault()?.ToString());
        var sheet = read.Value!;
        var potentials = sheet
            .Nets.Names.Where(_ => random.Next(4) > 0)
            .ToDictionary(n => n, _ => (random.NextDouble() * 400) - 50);
        var layout = ServiceDrawing.LayOut(sheet, potentials, new DrawingStyle(), TestContext.Current.CancellationToken);
        var points = potentials.Select(p => new PointFigure(p.Key, p.Key, p.Value, p.Value - 5, p.Value + 5)).ToArray();
        var drawing = new DrawnDocument(ServiceDrawing.Write(layout, new DrawingFigures { Points = points }));

        Assert.Equal(DrawnNets.Of(sheet), DrawnNets.Of(drawing, sheet));
        Assert.Empty(DrawingRulesTests.Overlaps(drawing.Bodies(), drawing.Bodies()));
        Assert.Empty(DrawingRulesTests.Overlaps(drawing.Texts(), drawing.Texts()));
        Assert.Empty(DrawingRulesTests.Overlaps(drawing.Bodies(), drawing.Cores()));
        var boxes = drawing.Bodies().Concat(drawing.Texts()).ToArray();
        Assert.Empty(drawing.Pieces.SelectMany(p => boxes.Where(p.RunsThrough).Select(b => b.Name)));
    }

    /// <summary>Parts of every common kind between nets picked at random, chassis and a rail more often than others.</summary>
    private static string Circuit(int parts, Random random)
    {
        StringBuilder text = new(
            "sheet: 1\nunit: Random\nmains: { volts: 230 V, frequency: 50 Hz }\ncontrols: { VOLUME: 50 % }\nparts:\n"
        );
        text.Append(
            "  T1:\n    is: transformer 20 VA\n    windings:\n      P: { pins: 1-2, volts: 230 V, ohms: 90 }\n      S: { pins: 3-4, volts: 200 V, amps: 30 mA, ohms: 300 }\n"
        );
        text.Append(
            "  F1: fuse 1A MAINS.L -> T1.1\n  W1: wire MAINS.N -> T1.2\n  D1: 1N4007 T1.3 -> HT\n  C1: 47u 400V HT -> GND\n"
        );
        var nets = Math.Max(3, parts * 2 / 3);
        for (var i = 5; i <= parts; i++)
        {
            text.Append("  ").Append(Part(i, nets, random)).Append('\n');
        }

        text.Append("signal: { in: N1, out: N2 }\n");
        text.Append(CultureInfo.InvariantCulture, $"# {parts} parts\n");
        return text.ToString()
            .Replace("signal: { in: N1, out: N2 }\n", parts > 5 ? "signal: { in: N1, out: HT }\n" : "", StringComparison.Ordinal);
    }

    private static string Part(int i, int nets, Random random)
    {
        var (a, b, c) = (Net(nets, random), Net(nets, random), Net(nets, random));
        while (b == a)
        {
            b = Net(nets, random);
        }

        a = i == 5 ? "N1" : a;
        b = i == 5 ? "HT" : b;
        return random.Next(i == 5 ? 1 : 11) switch
        {
            0 or 1 or 2 => $"R{i}: {1 + random.Next(90)}k {a} -> {b}",
            3 or 4 => $"C{i}: 22n 400V {a} -> {b}",
            5 => $"C{i}: 47u 400V {a} -> {b}",
            6 => $"D{i}: 1N4148 {a} -> {b}",
            7 => $"Q{i}: BC109C c={a} b={b} e={c}",
            8 => $"V{i}: 12AX7 1={a} 2={b} 3={c}",
            9 => $"VR{i}: pot 100k lin VOLUME top={a} wiper={b} bottom={c}",
            _ => $"U{i}: TL072 1={a} 2={b} 3={c} 8=HT 4=GND",
        };
    }

    private static string Net(int nets, Random random) =>
        random.Next(6) switch
        {
            0 => "GND",
            1 when random.Next(2) == 0 => "HT",
            _ => $"N{1 + random.Next(nets)}",
        };
}
