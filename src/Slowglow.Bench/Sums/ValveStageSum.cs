using Slowglow.Circuits.Models.Valve;
using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;

namespace Slowglow.Bench.Sums;

/// <summary>A triode with an anode load: where it rests, what it gives, drawn on its characteristics. Solved as a sheet.</summary>
public sealed class ValveStageSum : BenchSum
{
    private const int CurvePoints = 61;
    private const int Curves = 9;

    /// <summary>The supply's own volts are corrected this often: a diode and some ohms stand before them.</summary>
    private const int Corrections = 2;

    public override string Key => "valve-stage";
    public override string Title => "Valve stage";

    public override IReadOnlyList<SumField> Fields =>
        [
            new("valve", "Valve, a triode", Unit.None, "12AX7"),
            new("supply", "Supply", Unit.Volt, "300 V"),
            new("anode", "Anode resistor", Unit.Ohm, "100k"),
            new("cathode", "Cathode resistor", Unit.Ohm, "1k5"),
            new("bypass", "Bypassed", Unit.None, "yes") { Choices = ["yes", "no"] },
            new("next", "Grid leak that follows", Unit.Ohm, "1M"),
        ];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var library = DeviceLibrary.Shipped;
        if (library.Find(given.Word("valve")) is not { } device)
        {
            var near = string.Join(", ", library.Nearest(given.Word("valve")));
            return Wrong($"\"{given.Word("valve")}\" is no type number that is known here.", $"The nearest are {near}.");
        }

        if (device.Kind != DeviceKind.Triode)
        {
            return Wrong($"The {device.Type} is not a triode.", "Take a triode such as 12AX7; a pentode's stage needs a sheet.");
        }

        if (given["supply"] > 1000)
        {
            return Wrong("No small triode stands more than 1 kV.", "Type the supply as 300 V.");
        }

        var volts = given["supply"];
        SolvedStage? stage = null;
        for (var i = 0; i <= Corrections; i++)
        {
            var solved = SolvedStage.Solve(Sheet(device, given, volts), cancel);
            if (solved.Value is null)
            {
                return new(null, solved.Findings);
            }

            stage = solved.Value;
            volts *= given["supply"] / stage.Volts("HT");
        }

        return stage!.Settled && double.IsFinite(volts)
            ? Right(Say(stage, device, given))
            : Wrong("This stage comes to no rest.", "Look at the resistors once more.");
    }

    private static SumAnswer Say(SolvedStage stage, Device device, SumFigures given)
    {
        var (anode, cathode) = (stage.Volts("V1.a"), stage.Volts("V1.k"));
        var amps = cathode / given["cathode"];
        var clean = stage.CleanVolts;
        var gain = stage.Gain;
        var watts = (anode - cathode) * amps;
        var line = LoadLineOf(device, given, anode - cathode, amps, clean * Math.Sqrt(2));
        return new SumAnswer(
            [
                Line("anode, against chassis", anode, "V"),
                Line("cathode", cathode, "V"),
                Line("anode current", amps, "A"),
                Line("gain at 1 kHz", gain, "times"),
                Line("gain", 20 * Math.Log10(gain), "dB"),
                Line("output impedance", stage.OutputOhms, "ohm"),
                Line("largest clean output, rms", clean, "V"),
                Line("heat in the anode", watts, "W"),
            ],
            [
                $"The grid is at chassis; the cathode lifts itself to {Say(cathode, "V")}, which is {Say(amps, "A")} in {Engineering.Drawing(given["cathode"])}.",
                $"The anode stands {Say(given["supply"], "V")} - {Say(amps, "A")} x {Engineering.Drawing(given["anode"])} = {Say(given["supply"] - (amps * given["anode"]), "V")}.",
                $"Clean means below 5 % distortion. The {device.Type} is a typical one of the library; specimens differ by a tenth and more.",
            ]
        )
        {
            LoadLine = line,
        };
    }

    private static LoadLine LoadLineOf(Device device, SumFigures given, double volts, double amps, double swing)
    {
        var supply = given["supply"];
        var ohms = given["anode"] + given["cathode"];
        var most = Math.Max(supply / ohms, amps) * 1.25;

        // Grid volts from nothing to where the supply drives almost no current, in steps that read well.
        var step = Step(supply / device["mu"] / (Curves - 1));
        var curves = Enumerable
            .Range(0, Curves)
            .Select(k => -k * step)
            .Select(grid =>
                (
                    grid,
                    Enumerable
                        .Range(0, CurvePoints)
                        .Select(i => ValveCurves.AnodeAmps(device, supply * i / (CurvePoints - 1), grid))
                        .ToArray()
                )
            );
        return new LoadLine(supply, most, [.. curves], ohms, volts, amps, double.IsFinite(swing) ? swing : 0);
    }

    /// <summary>1, 2 or 5 times a power of ten, at least as large.</summary>
    private static double Step(double atLeast)
    {
        var decade = Math.Pow(10, Math.Floor(Math.Log10(atLeast)));
        return new[] { 1.0, 2, 5, 10 }.Select(m => m * decade).First(s => s >= atLeast * (1 - 1e-9));
    }

    private static string Sheet(Device device, SumFigures given, double volts) =>
        FormattableString.Invariant(
            $"""
            sheet: 1
            unit: Valve stage
            mains: {StageSupply.Mains}
            parts:
            {StageSupply.Rail("T1", "HT", volts)}
              V1: {device.Type}
              C1: 1u 400V IN -> V1.g
              R1: 1M V1.g -> GND
              R2: {given["anode"]:R} 10W HT -> V1.a
              R3: {given["cathode"]:R} 10W V1.k -> GND{(given.Word("bypass") == "no" ? "" : "\n  C2: 1000u 100V V1.k -> GND")}
              C3: 1u 1000V V1.a -> OUT
              R4: {given["next"]:R} OUT -> GND
            signal: {StageSupply.Signal}
            """
        );
}
