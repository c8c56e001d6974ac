using Slowglow.Circuits;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Circuits.Valves;

/// <summary>
/// Gas-filled regulator valves: strike, hold, go out. Data sheets from memory: 0A2 150 V at 5 to 30 mA with 185 V always enough to
/// strike, 0B2 108 V, 85A2 85 V at 1 to 10 mA.
/// </summary>
public sealed class GasRegulatorTests
{
    private static SheetOnBench With(string type, double supply, string series, string load = "10M") =>
        HighTension.Of(
            supply,
            $"  V1: {type}\n  R1: {series} 50W HT -> V1.a\n  W3: wire V1.k -> GND\n  R2: {load} 50W V1.a -> GND"
        );

    [Theory]
    [InlineData("0A2", "5k", 147, 153)]
    [InlineData("0B2", "8k2", 105, 111)]
    [InlineData("85A2", "33k", 83, 88)]
    [InlineData("0D3", "5k", 145, 156)]
    public void Hold_their_volts_from_a_good_supply(string type, string series, double low, double high) =>
        Assert.InRange(With(type, 260, series).Volts("V1.a"), low, high);

    /// <summary>From 5 to 30 mA a 0A2 moves by 2 V (data sheet, from memory).</summary>
    [Fact]
    public void Regulation_is_a_couple_of_volts()
    {
        var few = With("0A2", 260, "20k").Volts("V1.a");
        var many = With("0A2", 260, "3k7").Volts("V1.a");
        Assert.InRange(many - few, 1.2, 3);
    }

    /// <summary>175 V is above what it holds, and below what it strikes at: it stays dark, though lit it would have drawn its full current.</summary>
    [Fact]
    public void Does_not_strike_below_its_striking_volts()
    {
        var bench = With("0A2", 160, "500");
        Assert.InRange(bench.Volts("V1.a"), 156, 161);
        Assert.InRange(With("0A2", 190, "1k3").Volts("V1.a"), 149, 154);
    }

    /// <summary>A load that leaves the valve nothing takes its volts below what it holds; one that takes them below striking, too.</summary>
    [Fact]
    public void Goes_out_when_the_load_takes_all()
    {
        var bench = With("0A2", 260, "5k", "5k");
        Assert.Equal(130, bench.Volts("V1.a"), 2.0);
    }

    [Fact]
    public void A_dead_one_lets_the_rail_rise()
    {
        var bench = With("0A2", 260, "5k", "20k");
        Assert.InRange(bench.Volts("V1.a"), 147, 153);
        Assert.Equal(260 * 0.8, bench.Volts("V1.a", null, new Fault("V1", "", FailureMode.Dead)), 4.0);
        Assert.Equal(260 * 0.8, bench.Volts("V1.a", new Setup { Name = "pulled", Pulled = ["V1"] }), 4.0);
        Assert.InRange(bench.Volts("V1.a", null, new Fault("V1", "", FailureMode.Drifted, 1.1)), 162, 168);
        Assert.InRange(bench.Volts("V1.a", null, new Fault("V1", "a-k", FailureMode.Short)), 0, 0.1);
    }

    [Fact]
    public void Two_in_series_hold_the_sum()
    {
        var bench = HighTension.Of(
            400,
            "  V1: 0A2\n  V2: 0B2\n  R1: 10k 10W HT -> V1.a\n  W3: wire V1.k -> V2.a\n  W4: wire V2.k -> GND\n  R2: 1M V1.a -> GND\n  R3: 1M V2.a -> GND"
        );
        Assert.InRange(bench.Volts("V1.a"), 252, 264);
        Assert.InRange(bench.Volts("V2.a"), 105, 111);
    }
}
