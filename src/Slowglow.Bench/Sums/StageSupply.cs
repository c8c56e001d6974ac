namespace Slowglow.Bench.Sums;

/// <summary>Feeds a stage: sheets know no battery, so a stiff winding, a diode and a large reservoir stand for it.</summary>
internal static class StageSupply
{
    public const string Mains = "{ volts: 230 V, frequency: 50 Hz }";

    /// <summary>A small signal from a generator without resistance.</summary>
    public const string Signal = "{ in: IN, out: OUT, source: 1 ohm, level: 10 mV }";

    /// <summary>Part lines that hold a rail at about so many volts, either way round.</summary>
    public static string Rail(string transformer, string net, double volts)
    {
        var number = transformer[1..];
        var rms = (Math.Abs(volts) + 0.7) / Math.Sqrt(2);
        var (from, to) = volts > 0 ? ($"{transformer}.3", net) : (net, $"{transformer}.3");
        var (plus, minus) = volts > 0 ? (net, "GND") : ("GND", net);
        return FormattableString.Invariant(
            $$"""
              {{transformer}}:
                is: transformer 100 VA
                windings:
                  P: { pins: 1-2, volts: 230 V, ohms: 1 }
                  S: { pins: 3-4, volts: {{rms:R}} V, ohms: 0.5 }
              W{{number}}1: wire MAINS.L -> {{transformer}}.1
              W{{number}}2: wire MAINS.N -> {{transformer}}.2
              W{{number}}3: wire {{transformer}}.4 -> GND
              D{{number}}1: 1N5408 {{from}} -> {{to}}
              C{{number}}1: 1000u 1000V {{plus}} -> {{minus}}
            """
        );
    }
}
