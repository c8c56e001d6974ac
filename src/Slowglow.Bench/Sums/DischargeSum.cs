using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Sums;

/// <summary>How long a charged capacitor stays dangerous, and what discharges it in a given time: t = R C ln(V0 / V).</summary>
public sealed class DischargeSum : BenchSum
{
    /// <summary>Volts dc that count as safe to touch in dry conditions: IEC 61140 and its kin, see docs/power.md.</summary>
    private const double SafeVolts = 60;

    public override string Key => "discharge";
    public override string Title => "Discharge";

    public override IReadOnlyList<SumField> Fields =>
        [
            new("farads", "Capacitance", Unit.Farad, "100u"),
            new("volts", "Charged to", Unit.Volt, "400 V"),
            new("ohms", "Resistor across it", Unit.Ohm, "100k"),
            new("safe", "Down to", Unit.Volt, "60 V"),
        ];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var (c, from, r, to) = (given["farads"], given["volts"], given["ohms"], given["safe"]);
        if (to >= from)
        {
            return Wrong($"{Say(to, "V")} is no less than {Say(from, "V")}.", "Let it fall to less than it is charged to.");
        }

        var ratio = Math.Log(from / to);
        return Right(
            new SumAnswer(
                [
                    Line($"falls to {Say(to, "V")} after", r * c * ratio, "s"),
                    Line("stored in it", c * from * from / 2, "J"),
                    Line("for 2 s it takes", 2 / (c * ratio), "ohm"),
                    Line("heat in the resistor at first", from * from / r, "W"),
                    Line("current at first", from / r, "A"),
                ],
                [
                    $"t = R C ln({Say(from, "V")} / {Say(to, "V")}) = {Say(r * c, "s")} x {ratio.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)}.",
                    to > SafeVolts
                        ? $"Caution: {Say(to, "V")} is not safe to touch. Measure before you touch, whatever the sum says."
                        : "Measure before you touch, whatever the sum says: the resistor may be open. Local codes and licensed practice come first.",
                ]
            )
        );
    }
}
