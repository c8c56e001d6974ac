using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Circuits.Contacts;

/// <summary>A switched jack grounds its input while nothing is plugged in. Common practice, no source.</summary>
public sealed class JackTests
{
    private static readonly SheetOnBench Input = HighTension.Of(
        20,
        """
          J1: jack IN
          S1: contact J1=out IN -> GND
          S2: contact J1=in IN -> SENSE
          R1: 10k HT -> IN
          R2: 10k IN -> GND
          R3: 1M SENSE -> GND
        """
    );

    [Fact]
    public void Is_grounded_with_nothing_in_it()
    {
        Assert.Equal(0, Input.Volts("IN"), 0.001);
        Assert.Equal(0, Input.Volts("SENSE"), 0.001);
    }

    [Fact]
    public void Is_free_with_a_plug_in_it()
    {
        var plugged = new Setup
        {
            Name = "plugged",
            Switches = new Dictionary<string, string> { ["J1"] = "in" },
        };
        Assert.Equal(Input.Volts("HT") / 2, Input.Volts("IN", plugged), 0.1);
        Assert.Equal(Input.Volts("IN", plugged), Input.Volts("SENSE", plugged), 0.01);
    }
}
