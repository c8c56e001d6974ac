using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Sums;

/// <summary>Volts, ripple and winding current of a rectifier with its reservoir, over the mains cycle, solved as a sheet.</summary>
public sealed class ReservoirSum : BenchSum
{
    public override string Key => "reservoir";
    public override string Title => "Rectifier and reservoir";

    public override IReadOnlyList<SumField> Fields =>
        [
            new("rms", "Winding, rms (each half of a tapped one)", Unit.Volt, "230 V"),
            new("ohms", "Its resistance, with the primary's share", Unit.Ohm, "120"),
            new("form", "Rectifier", Unit.None, "bridge") { Choices = ["bridge", "full-wave, tapped winding", "one diode"] },
            new("farads", "Reservoir", Unit.Farad, "47u"),
            new("amps", "Load", Unit.Ampere, "80 mA"),
            new("hertz", "Mains", Unit.None, "50 Hz") { Choices = ["50 Hz", "60 Hz"] },
        ];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        // A load that draws the current asked for is a resistance found in three turns.
        var load = 1.3 * given["rms"] / given["amps"];
        SolvedStage? stage = null;
        for (var turn = 0; turn < 3; turn++)
        {
            var solved = SolvedStage.Solve(Sheet(given, load), cancel);
            if (solved.Value is not { Settled: true } found)
            {
                return solved.Value is null
                    ? new(null, solved.Findings)
                    : Wrong("This supply comes to no rest.", "Look at the figures once more.");
            }

            stage = found;
            load = found.Volts("HT") / given["amps"];
        }

        var (dc, ripple) = (stage!.Volts("HT"), stage.Volts("HT", ProbeKind.Ac));
        var times = given.Word("form") == "one diode" ? 1 : 2;
        var hertz = given.Word("hertz") == "60 Hz" ? 60 : 50;
        return Right(
            new SumAnswer(
                [
                    Line("volts dc at that load", dc, "V"),
                    Line("ripple, rms", ripple, "V"),
                    Line("ripple of the dc", 100 * ripple / dc, "%"),
                    Line("ripple frequency", times * hertz, "Hz"),
                    Line("without load, about", given["rms"] * Math.Sqrt(2), "V"),
                    Line("current in the winding, rms", stage.WindingAmps, "A"),
                    Line("which is, times the load", stage.WindingAmps / given["amps"], "times"),
                ],
                [
                    "Solved over the mains cycle with the diodes' own law; nothing is taken from a curve.",
                    $"By the envelope: I / (2 f C) = {Say(given["amps"] / (times * hertz * given["farads"]), "V")} peak to peak if the reservoir fed the load all the time.",
                ]
            )
        );
    }

    private static string Sheet(SumFigures given, double load)
    {
        var (secondary, diodes) = given.Word("form") switch
        {
            "one diode" => (Winding("3-4", given["rms"], 1, given["ohms"]), "  D1: 1N5408 T1.3 -> HT\n  W3: wire T1.4 -> GND"),
            "bridge" => (
                Winding("3-4", given["rms"], 1, given["ohms"]),
                "  D1: 1N5408 T1.3 -> HT\n  D2: 1N5408 T1.4 -> HT\n  D3: 1N5408 GND -> T1.3\n  D4: 1N5408 GND -> T1.4"
            ),
            _ => (
                Winding("3-4-5", given["rms"], 2, 2 * given["ohms"]),
                "  D1: 1N5408 T1.3 -> HT\n  D2: 1N5408 T1.5 -> HT\n  W3: wire T1.4 -> GND"
            ),
        };
        return FormattableString.Invariant(
            $$"""
            sheet: 1
            unit: Rectifier
            mains: { volts: 230 V, frequency: {{given.Word("hertz")}} }
            parts:
              T1:
                is: transformer 1000 VA
                windings:
                  P: { pins: 1-2, volts: 230 V, ohms: 0.001 }
                  S: {{secondary}}
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
            {{diodes}}
              C1: {{given["farads"]:R}} 1000V HT -> GND
              R1: {{load:R}} 1000W HT -> GND
            """
        );
    }

    private static string Winding(string pins, double volts, int halves, double ohms)
    {
        var each = FormattableString.Invariant($"{volts:R}");
        var all = halves == 2 ? $"{each}-0-{each}" : each;
        return FormattableString.Invariant($"{{ pins: {pins}, volts: {all} V, ohms: {ohms:R} }}");
    }
}
