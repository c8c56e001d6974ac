using Slowglow.Circuits;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Circuits.Relays;

/// <summary>Contacts follow the coil. Pull-in at 75 % and release at 10 % of the coil volts: common practice, no source.</summary>
public sealed class RelayTests
{
    private const string Changeover = """
          R1: {0} 5W HT -> COIL
          K1: relay 24V 1k COIL -> GND
          K1a: contact K1=on HT -> MADE
          K1b: contact K1=off HT -> REST
          R2: 10k MADE -> GND
          R3: 10k REST -> GND
        """;

    private static SheetOnBench With(string series) =>
        HighTension.Of(26, Changeover.Replace("{0}", series, StringComparison.Ordinal));

    [Theory]
    [InlineData("100", true)]
    [InlineData("300", true)]
    [InlineData("600", false)]
    [InlineData("10k", false)]
    public void Pulls_in_when_the_coil_has_its_volts(string series, bool pulledIn)
    {
        var bench = With(series);
        var ht = bench.Volts("HT");
        Assert.Equal(pulledIn ? ht : 0, bench.Volts("MADE"), 0.01);
        Assert.Equal(pulledIn ? 0 : ht, bench.Volts("REST"), 0.01);
    }

    [Fact]
    public void An_open_coil_lets_go()
    {
        var bench = With("100");
        var open = new Fault("K1", "", FailureMode.Open);
        Assert.Equal(0, bench.Volts("MADE", null, open), 0.01);
        Assert.Equal(bench.Volts("HT", null, open), bench.Volts("REST", null, open), 0.05);
    }

    [Fact]
    public void A_burnt_contact_stays_open_and_a_welded_one_closed()
    {
        var bench = With("100");
        Assert.Equal(0, bench.Volts("MADE", null, new Fault("K1a", "", FailureMode.Open)), 0.01);
        var welded = new Fault("K1b", "", FailureMode.Short);
        Assert.Equal(bench.Volts("HT", null, welded), bench.Volts("REST", null, welded), 0.05);
    }

    [Fact]
    public void The_setup_may_say_how_it_stands()
    {
        var held = new Setup
        {
            Name = "held",
            Switches = new Dictionary<string, string> { ["K1"] = "off" },
        };
        Assert.Equal(0, With("100").Volts("MADE", held), 0.01);
    }

    /// <summary>Fed through its own contact it never starts; with a start button's resistor across it, it holds itself in.</summary>
    [Fact]
    public void Holds_itself_through_its_own_contact_only_once_started()
    {
        const string Latch =
            "  K1: relay 24V 1k COIL -> GND\n  K1a: contact K1=on HT -> COIL\n  R1: {0} 1W HT -> COIL\n  R2: 10k COIL -> GND";
        Assert.InRange(HighTension.Of(26, Latch.Replace("{0}", "100k", StringComparison.Ordinal)).Volts("COIL"), 0, 1);
        var started = HighTension.Of(26, Latch.Replace("{0}", "250", StringComparison.Ordinal));
        Assert.Equal(started.Volts("HT"), started.Volts("COIL"), 0.05);
    }
}
