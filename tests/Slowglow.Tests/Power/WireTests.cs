using Slowglow.Power.Rewinding;

namespace Slowglow.Tests.Power;

/// <summary>Wire, cores and copper against reference/wire_awg.csv, wire_enamelled_metric.csv and transformer_cores.csv.</summary>
public sealed class WireTests
{
    public static TheoryData<int, double, double, double> Gauges() =>
        [
            .. Published
                .Table("wire_awg")
                .Select(r =>
                    (
                        int.Parse(r["awg"]),
                        Published.Number(r["diameter_millimetres"]),
                        Published.Number(r["area_square_millimetres"]),
                        Published.Number(r["ohms_per_kilometre_20_celsius"])
                    )
                ),
        ];

    [Theory]
    [MemberData(nameof(Gauges))]
    public void American_gauge(int gauge, double diameter, double area, double ohms)
    {
        var wire = WireSize.OfGauge(gauge);
        Assert.Equal(diameter, wire.BareMillimetres, 0.001 * diameter);
        Assert.Equal(area, wire.SquareMillimetres, 0.002 * area);
        Assert.Equal(ohms, Copper.Ohms(1000, wire.SquareMillimetres), 0.003 * ohms);
        Assert.Equal(gauge, wire.NearestGauge);
    }

    [Fact]
    public void Enamel_of_the_second_grade()
    {
        foreach (var row in Published.Table("wire_enamelled_metric").Where(r => r["grade"] == "2"))
        {
            var bare = Published.Number(row["bare_diameter_millimetres"]);
            var overall = Published.Number(row["max_overall_diameter_millimetres"]);
            Assert.Equal(overall, new WireSize(bare).OverallMillimetres, 0.02 * overall);
            Assert.Equal(bare, WireSize.UnderEnamel(overall).BareMillimetres, 0.02 * bare);
        }
    }

    [Fact]
    public void Laminations()
    {
        var rows = Published.Table("transformer_cores");
        Assert.Equal(rows.Select(r => r["size"]), Lamination.All.Select(l => l.Name));
        foreach (var row in rows)
        {
            var l = Lamination.Named(row["size"])!;
            Assert.Equal(Published.Number(row["tongue_millimetres"]), l.Tongue);
            Assert.Equal(Published.Number(row["window_area_square_millimetres"]), l.WindowWidth * l.WindowHeight, 1.0);
            Assert.Equal(Published.Number(row["iron_path_millimetres"]), l.IronPath, 0.2);
        }
    }

    /// <summary>The middle turn of a full window is 2 (tongue + stack) + pi tongue / 2 without a former (reference/transformer_rules.csv).</summary>
    [Theory]
    [InlineData("EI66", 123)]
    [InlineData("EI96", 178)]
    [InlineData("EI120", 223)]
    public void Mean_turn(string size, double millimetres)
    {
        var l = Lamination.Named(size)!;
        var former = 2 * Math.PI * 1.0;
        Assert.Equal(millimetres, Former.Turn(new CoreStack(l, l.Tongue), l.WindowWidth / 2) - former, 0.01 * millimetres);
    }

    [Fact]
    public void Insulation_classes()
    {
        var rows = Published.Table("insulation_classes");
        foreach (var known in InsulationClass.All)
        {
            double Value(string system, string quantity) =>
                Published.Number(
                    rows.Single(r => r["system"] == system && r["class"] == known.Letter && r["quantity"] == quantity)["value"]
                );
            Assert.Equal(Value("IEC 60085", "class temperature"), known.ClassCelsius);
            Assert.Equal(Value("EN 61558-1", "maximum winding temperature in normal use"), known.WindingCelsius);
        }
    }
}
