using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;

namespace Slowglow.Tests.Bench.Jobs;

public sealed class SetupKeysTests
{
    private static readonly Sheet Sheet = SheetReader
        .Read(
            """
            sheet: 1
            unit: Wren one
            mains: { volts: 230 V, frequency: 50 Hz }
            switches:
              VOICE: [flat, bright]
            controls:
              VOLUME: 50 %
            parts:
              VR1: pot 1M log VOLUME top=A wiper=B bottom=GND
              S1a: contact VOICE=bright A -> B
              R1: 100k A -> GND
            """
        )
        .Value!;

    /// <summary>What is written must read back as the same setup, or a job would not come back as it was.</summary>
    [Theory]
    [InlineData("mains: 110 V, limiter: 40 W, valves: out")]
    [InlineData("power: off")]
    [InlineData("lifted: [R1.2]")]
    [InlineData("VOICE: bright, VOLUME: 30 %")]
    [InlineData("load: 8 ohm")]
    public void Keys_written_read_back_as_the_same_setup(string keys)
    {
        var document = ReadingsReader.Read($"setups:\n  one: {{ {keys} }}\nreadings: []\n", Sheet);

        Assert.DoesNotContain(document.Findings, f => f.Severity == Severity.Error);
        Assert.Equal(keys, SetupKeys.Write(document.Value!.Setups[0]));
    }
}
