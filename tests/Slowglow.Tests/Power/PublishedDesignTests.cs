using Slowglow.Power.Rewinding;

namespace Slowglow.Tests.Power;

/// <summary>
/// Published transformer designs (reference/worked_examples.csv) come out of the designer: turns within 3 %, wire within one gauge. The
/// examples take the iron whole and their volts with nothing drawn.
/// </summary>
public sealed class PublishedDesignTests
{
    private const double Turns = 0.03;

    private static WindingNeed Free(string name, double volts, double amps) => new(name, [volts], amps, 0, false);

    private static WoundDesign Design(
        double tongue,
        double stack,
        double hertz,
        double tesla,
        double density,
        double mains,
        params WindingNeed[] secondaries
    ) =>
        TransformerDesigner.On(
            new CoreStack(new Lamination("published", tongue), stack, 1),
            new TransformerNeed([WindingNeed.Primary("P", mains), .. secondaries], hertz),
            new DesignLimits { Tesla = tesla, Density = density }
        );

    [Fact]
    public void Fifty_voltamperes_on_one_and_a_half_inches()
    {
        var design = Design(38.1, 38.1, 50, 1.2, 2.3, 230, Free("S", 12, 50.0 / 12));
        var turns = Published.Worked("transformer-50va", "primary turns");
        Assert.Equal(turns, design.Of("P").Turns, Turns * turns);
        var perVolt = Published.Worked("transformer-50va", "turns per volt");
        Assert.Equal(perVolt, design.TurnsPerVolt, Turns * perVolt);
    }

    /// <summary>1000 circular mils for each ampere; 0.849 T at 60 Hz by its constant.</summary>
    [Theory]
    [InlineData(220)]
    [InlineData(110)]
    public void Twenty_four_volts_on_one_and_a_quarter_inches(double mains)
    {
        var density = 1 / (1000 * Math.PI / 4 * 0.0254 * 0.0254);
        var design = Design(31.75, 31.75, 60, 0.849, density, mains, Free("S", 24, 1.953));
        var turns = Published.Worked("transformer-24v", $"primary turns at {mains} V");
        Assert.Equal(turns, design.Of("P").Turns, Turns * turns);
        var secondary = Published.Worked("transformer-24v", "secondary turns");
        Assert.Equal(secondary, design.Of("S").Turns, Turns * secondary);
        var wire = design.Of("S");
        Assert.InRange(wire.Wire.NearestGauge, 16, 18);
        if (mains == 220)
        {
            Assert.InRange(design.Of("P").Wire.NearestGauge, 26, 28);
        }
    }

    [Fact]
    public void Windings_of_a_valve_supply_on_EI96()
    {
        var design = Design(
            32,
            40,
            50,
            1.2,
            2.5,
            240,
            Free("half", 120, 0.01),
            Free("HT", 300, 0.01),
            Free("LT", 6.3, 0.1),
            Free("twice", 12.6, 0.1),
            Free("rectifier", 5, 0.1)
        );
        void Agrees(string winding, string row)
        {
            var turns = Published.Worked("transformer-ei96", row);
            Assert.Equal(turns, design.Of(winding).Turns, Turns * turns);
        }

        Agrees("P", "turns for 240 V");
        Agrees("half", "turns for 120 V");
        Agrees("HT", "turns for 300 V");
        Agrees("LT", "turns for 6.3 V");
        Agrees("twice", "turns for 12.6 V");
        Agrees("rectifier", "turns for 5 V");
    }

    [Fact]
    public void Turns_per_volt_of_a_five_by_seven_bobbin()
    {
        var design = Design(50, 70, 50, 1.2, 2.5, 230, Free("S", 24, 1));
        var perVolt = Published.Worked("transformer-5x7", "turns per volt");
        Assert.Equal(perVolt, design.TurnsPerVolt, Turns * perVolt);
    }

    /// <summary>60 000 lines per square inch are 0.930 T; 27 SWG is 0.4166 mm, rated 0.38 to 0.47 A there (reference/wire_swg_currents.csv).</summary>
    [Fact]
    public void A_valve_supply_at_sixty_thousand_lines()
    {
        const double Swg27 = 0.4166;
        var density = 0.4 / (Math.PI / 4 * Swg27 * Swg27);
        var design = Design(
            35,
            35,
            50,
            0.930,
            density,
            200,
            Free("HT", 350, 0.12),
            Free("LT", 6.3, 3),
            Free("rectifier", 5, 2.2)
        );
        var watts = Published.Worked("transformer-valve", "secondary power");
        Assert.Equal(watts, design.VoltAmperes, 0.01 * watts);
        var constant = Published.Worked("transformer-valve", "turns per volt times area");
        Assert.Equal(constant, design.TurnsPerVolt * 35 * 35 / 645.16, Turns * constant);
        var amps = Published.Worked("transformer-valve", "primary current");
        Assert.Equal(amps, design.Of("P").Amps, 0.1 * amps);
        Assert.InRange(
            design.Of("P").Wire.NearestGauge,
            new WireSize(Swg27).NearestGauge - 1,
            new WireSize(Swg27).NearestGauge + 1
        );
    }
}
