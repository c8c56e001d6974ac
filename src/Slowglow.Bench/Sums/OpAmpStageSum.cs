using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;

namespace Slowglow.Bench.Sums;

/// <summary>An op-amp with two resistors, solved as a sheet.</summary>
public sealed class OpAmpStageSum : BenchSum
{
    public override string Key => "op-amp-stage";
    public override string Title => "Op-amp stage";

    public override IReadOnlyList<SumField> Fields =>
        [
            new("chip", "Op-amp", Unit.None, "TL072"),
            new("form", "Form", Unit.None, "inverting") { Choices = ["inverting", "non-inverting"] },
            new("input", "Resistor to the input (inverting) or to chassis", Unit.Ohm, "10k"),
            new("feedback", "Feedback resistor", Unit.Ohm, "100k"),
            new("rails", "Rails, each", Unit.Volt, "15 V"),
            new("load", "Load", Unit.Ohm, "10k"),
        ];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var library = DeviceLibrary.Shipped;
        if (library.Find(given.Word("chip")) is not { Kind: DeviceKind.OpAmp } chip)
        {
            return Wrong($"\"{given.Word("chip")}\" is no op-amp that is known here.", "Type it as TL072 or NE5532.");
        }

        if (chip.Limits.TryGetValue("volts", out var most) && 2 * given["rails"] > most)
        {
            return Wrong(
                $"The {chip.Type} stands {Say(most, "V")} between its rails.",
                $"Give at most {Say(most / 2, "V")} each."
            );
        }

        var solved = SolvedStage.Solve(Sheet(chip, given), cancel);
        return solved.Value is not { } stage ? new(null, solved.Findings)
            : stage.Settled ? Right(Say(stage, chip, given))
            : Wrong("This stage comes to no rest.", "Look at the resistors once more.");
    }

    private static SumAnswer Say(SolvedStage stage, Device chip, SumFigures given)
    {
        var inverting = given.Word("form") != "non-inverting";
        var (ri, rf) = (Engineering.Drawing(given["input"]), Engineering.Drawing(given["feedback"]));
        var ideal = (given["feedback"] / given["input"]) + (inverting ? 0 : 1);
        var gain = stage.Gain;
        return new SumAnswer(
            [
                Line("gain at 1 kHz", gain, "times"),
                Line("gain", 20 * Math.Log10(gain), "dB"),
                Line("largest clean output, rms", stage.CleanVolts, "V"),
                Line("down by 3 dB at", stage.TopHertz, "Hz"),
                Line("input impedance", stage.InputOhms, "ohm"),
                Line("output impedance", stage.OutputOhms, "ohm"),
            ],
            [
                inverting
                    ? $"With an ideal op-amp: {rf} / {ri} = {Say(ideal, "times")}, upside down."
                    : $"With an ideal op-amp: 1 + {rf} / {ri} = {Say(ideal, "times")}.",
                $"The {chip.Type} has {Say(chip["gbw"], "Hz")} of gain-bandwidth and follows {Say(chip["slew"] / 1e6, "V")} in a microsecond; clean means below 5 % distortion.",
            ]
        );
    }

    private static string Sheet(Device chip, SumFigures given)
    {
        string Pin(string electrode) => chip.Pinout.First(p => p.Electrode == electrode && p.Section is 0 or 1).Number;
        var pins =
            $"{chip.Pinout.First(p => p.Electrode == "v+").Number}=PLUS {chip.Pinout.First(p => p.Electrode == "v-").Number}=MINUS "
            + $"{Pin("in-")}=X {Pin("in+")}={(given.Word("form") == "non-inverting" ? "IN" : "GND")} {Pin("out")}=OUT";
        var input = given.Word("form") == "non-inverting" ? "GND" : "IN";
        return FormattableString.Invariant(
            $$"""
            sheet: 1
            unit: Op-amp stage
            mains: {{StageSupply.Mains}}
            parts:
            {{StageSupply.Rail("T1", "PLUS", given["rails"])}}
            {{StageSupply.Rail("T2", "MINUS", -given["rails"])}}
              U1: {{chip.Type}} {{pins}}
              R1: {{given["input"]:R}} {{input}} -> X
              R2: {{given["feedback"]:R}} X -> OUT
              R3: {{given["load"]:R}} OUT -> GND
              R4: 10M IN -> GND
            signal: {{StageSupply.Signal}}
            """
        );
    }
}
