using Slowglow.Power.Supplies;
using Slowglow.Sheets;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>What hangs on the mains is told apart before anything is advised.</summary>
public sealed class SupplyKindTests
{
    private static MainsSide Of(string parts) =>
        MainsSide.Of(
            SheetReader.Read($"sheet: 1\nunit: Bed\nmains: {{ volts: 230 V, frequency: 50 Hz }}\nparts:\n{parts}\n").Value!
        );

    [Theory]
    [InlineData("kittiwake-15")]
    [InlineData("saltmarsh-lm2")]
    [InlineData("heronsgate-m60")]
    public void Demo_units_have_a_mains_transformer(string name)
    {
        var side = MainsSide.Of(SheetReader.Read(DemoText.Of(name)).Value!);
        Assert.Equal(SupplyKind.Transformer, side.Kind);
        Assert.Equal("T1", side.Transformers.Single().Designator);
        Assert.Null(side.Refusal);
    }

    [Fact]
    public void A_rectifier_on_the_mains_without_a_transformer()
    {
        var side = Of("  D1: 1N4007 MAINS.L -> RAW\n  W1: wire MAINS.N -> GND\n  C1: 47u 400V RAW -> GND\n  R1: 10k RAW -> GND");
        Assert.Equal(SupplyKind.Transformerless, side.Kind);
        Assert.Contains("no mains transformer", side.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_switched_mode_supply()
    {
        var side = Of(
            """
              F1: fuse 1A MAINS.L -> A
              D1: 1N4007 A -> RAW
              D2: 1N4007 MAINS.N -> RAW
              D3: 1N4007 COLD -> A
              D4: 1N4007 COLD -> MAINS.N
              C1: 100u 400V RAW -> COLD
              T1:
                is: transformer 20 VA
                windings:
                  P: { pins: 1-2, volts: 300 V }
                  S: { pins: 3-4, volts: 12 V }
              W1: wire RAW -> T1.1
              Q1: 2N3055 c=T1.2 b=DRIVE e=COLD
              R1: 10k DRIVE -> COLD
              W2: wire T1.4 -> GND
              D5: 1N4007 T1.3 -> OUT
              C2: 100u 25V OUT -> GND
            """
        );
        Assert.Equal(SupplyKind.SwitchedMode, side.Kind);
        Assert.Contains("switched-mode", side.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_without_an_inlet() => Assert.Equal(SupplyKind.NoMains, Of("  R1: 10k A -> GND").Kind);
}
