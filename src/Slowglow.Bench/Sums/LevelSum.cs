using System.Globalization;
using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Sums;

/// <summary>
/// A level in volts, dBu, dBV and watts. 0 dBu is 0.7746 V (1 mW in 600 ohm), 0 dBV is 1 V: IEC 60027-3 and broadcasting practice.
/// </summary>
public sealed class LevelSum : BenchSum
{
    /// <summary>Volts of 0 dBu: root of 0.6.</summary>
    private static readonly double Dbu = Math.Sqrt(0.6);

    public override string Key => "level";
    public override string Title => "Level";

    public override IReadOnlyList<SumField> Fields =>
        [new("level", "Level: +4 dBu, -10 dBV, 1.23 V, 15 W", Unit.None, "+4 dBu"), new("ohms", "Into", Unit.Ohm, "8")];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var text = given.Word("level");
        var ohms = given["ohms"];
        if (Volts(text, ohms) is not { } volts)
        {
            return Wrong($"\"{text}\" is no level.", "Type it as +4 dBu, -10 dBV, 775 mV or 15 W.");
        }

        return Right(
            new SumAnswer(
                [
                    Line("volts, rms", volts, "V"),
                    Line("volts, peak of a sine", volts * Math.Sqrt(2), "V"),
                    Line("volts, peak to peak", 2 * volts * Math.Sqrt(2), "V"),
                    Line("against 0.7746 V", 20 * Math.Log10(volts / Dbu), "dBu"),
                    Line("against 1 V", 20 * Math.Log10(volts), "dBV"),
                    Line($"watts in {Engineering.Format(ohms, "ohm")}", volts * volts / ohms, "W"),
                ],
                ["dBu = 20 log(V / 0.7746 V); dBV = 20 log(V / 1 V); W = V x V / R."]
            )
        );
    }

    private static double? Volts(string text, double ohms)
    {
        var plain = text.Replace(" ", "", StringComparison.Ordinal).Replace('\u2212', '-').Replace(',', '.');
        if (Decibels(plain, "dBu") is { } dbu)
        {
            return Dbu * Math.Pow(10, dbu / 20);
        }

        if (Decibels(plain, "dBV") is { } dbv)
        {
            return Math.Pow(10, dbv / 20);
        }

        return !QuantityText.TryRead(text, out var read) || !(read.Value > 0) ? null
            : read.Unit == Unit.Watt ? Math.Sqrt(read.Value * ohms)
            : read.Fits(Unit.Volt) ? read.Value
            : null;
    }

    private static double? Decibels(string text, string unit) =>
        text.EndsWith(unit, StringComparison.OrdinalIgnoreCase)
        && double.TryParse(text[..^unit.Length], NumberStyles.Float, CultureInfo.InvariantCulture, out var figure)
        && Math.Abs(figure) <= 200
            ? figure
            : null;
}
