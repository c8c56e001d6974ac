using System.Globalization;

namespace Slowglow.Tests.Circuits.Solved;

/// <summary>Valve and op-amp stages drawn at random on a rectified supply, each part a block of the sheet that may stand anywhere.</summary>
internal static class RandomStages
{
    private const string Supply = """
          T1:
            is: transformer 60 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 20 }
              S: { pins: 3-4, volts: 215 V, amps: 100 mA, ohms: 100 }
              L: { pins: 5-6-7, volts: 15-0-15 V, amps: 200 mA, ohms: 5 }
          W1: wire MAINS.L -> T1.1
          W2: wire MAINS.N -> T1.2
          W3: wire T1.6 -> GND
          D1: 1N4007 T1.3 -> HT
          D2: 1N4007 T1.4 -> HT
          D3: 1N4007 GND -> T1.3
          D4: 1N4007 GND -> T1.4
          D5: 1N4007 T1.5 -> PLUS
          D6: 1N4007 MINUS -> T1.5
          D7: 1N4007 T1.7 -> PLUS
          D8: 1N4007 MINUS -> T1.7
          C1: 47u 450V HT -> GND
          C2: 1000u 35V PLUS -> GND
          C3: 1000u 35V GND -> MINUS
          R1: 220k HT -> GND
        """;

    private static readonly string[] Loads = ["47k", "100k", "220k"];
    private static readonly string[] Cathodes = ["820", "1k5", "2k7"];
    private static readonly string[] Feedback = ["10k", "22k", "100k"];

    /// <summary>Blocks of the parts section.</summary>
    public static List<string> Of(Random random)
    {
        List<string> blocks = [];
        foreach (var line in Supply.Split('\n'))
        {
            if (line.StartsWith("    ", StringComparison.Ordinal))
            {
                blocks[^1] += "\n" + line;
            }
            else
            {
                blocks.Add(line);
            }
        }

        var (input, number) = ("IN", 10);
        for (var stage = 0; stage < 3; stage++)
        {
            var output = $"OUT{stage.ToString(CultureInfo.InvariantCulture)}";
            blocks.AddRange(
                random.Next(2) == 0 ? Valve(random, input, output, ref number) : OpAmp(random, input, output, ref number)
            );
            input = output;
        }

        return blocks;
    }

    private static IEnumerable<string> Valve(Random random, string input, string output, ref int number)
    {
        var n = (number += 10).ToString(CultureInfo.InvariantCulture);
        return
        [
            $"  V{n}: 12AX7",
            $"  R{n}1: {random.GetItems(Loads, 1)[0]} HT -> V{n}.1",
            $"  R{n}2: {random.GetItems(Cathodes, 1)[0]} V{n}.3 -> GND",
            $"  R{n}3: 1M {input} -> GND",
            $"  R{n}4: 10k {input} -> V{n}.2",
            $"  C{n}1: 22n 400V V{n}.1 -> {output}",
            $"  R{n}5: 470k {output} -> GND",
        ];
    }

    private static IEnumerable<string> OpAmp(Random random, string input, string output, ref int number)
    {
        var n = (number += 10).ToString(CultureInfo.InvariantCulture);
        return
        [
            $"  U{n}: TL072 1=O{n} 2=M{n} 3=P{n} 8=PLUS 4=MINUS",
            $"  R{n}1: 1M {input} -> GND",
            $"  C{n}2: 100n {input} -> P{n}",
            $"  R{n}2: 1M P{n} -> GND",
            $"  R{n}3: {random.GetItems(Feedback, 1)[0]} O{n} -> M{n}",
            $"  R{n}4: 10k M{n} -> GND",
            $"  C{n}1: 1u 63V O{n} -> {output}",
            $"  R{n}5: 100k {output} -> GND",
        ];
    }

    public static SheetOnBench Bench(IEnumerable<string> blocks) =>
        SheetOnBench.From(
            $"sheet: 1\nunit: Test bed\nmains: {{ volts: 230 V, frequency: 50 Hz, tolerance: 6 % }}\nparts:\n{string.Join('\n', blocks)}\n"
                + "signal: { in: IN, out: OUT2, source: 1k, level: 10 mV, load: 1M }\n"
        );
}
