using Slowglow.Circuits;
using Slowglow.Circuits.Solved;

namespace Slowglow.Tests.Power;

/// <summary>The limiter lamp and what stands behind it, against bisection to the last digit.</summary>
public sealed class LampSearchTests
{
    private const double Mains = 230;

    /// <summary>A resistor behind the lamp, from a dead short to hardly anything.</summary>
    [Theory]
    [InlineData(0.01)]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(1000)]
    [InlineData(10000)]
    [InlineData(1e6)]
    public void Lamp_and_resistor_agree(double behind)
    {
        var lamp = new TungstenLamp(60, Mains);
        Agrees(lamp, ohms => Mains / (ohms + behind));
    }

    /// <summary>A rectifier draws nothing below its reservoir's volts; a unit with a regulated rail draws the more the less it gets.</summary>
    [Theory]
    [InlineData(5, 0)]
    [InlineData(60, 100)]
    [InlineData(200, 180)]
    public void Lamp_and_a_load_that_holds_its_volts_agree(double watts, double held)
    {
        var lamp = new TungstenLamp(watts, Mains);
        Agrees(lamp, ohms => (Mains - held) / (ohms + 20));
    }

    private static void Agrees(TungstenLamp lamp, Func<double, double> amps)
    {
        var (low, high) = (0.5 * lamp.ColdOhms, 1.5 * lamp.HotOhms);
        for (var k = 0; k < 60; k++)
        {
            var middle = Math.Sqrt(low * high);
            (low, high) = lamp.Ohms(amps(middle) * middle) > middle ? (middle, high) : (low, middle);
        }

        foreach (var start in new[] { double.NaN, lamp.ColdOhms, lamp.HotOhms })
        {
            var search = new LampSearch(lamp, start);
            var rounds = 0;
            for (; !search.IsFound && rounds < 20; rounds++)
            {
                search.Learn(amps(search.Ohms));
            }

            Assert.InRange(rounds, 1, 8);
            Assert.Equal(low, search.Ohms, 0.005 * low);
        }
    }
}
