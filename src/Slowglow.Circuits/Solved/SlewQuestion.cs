using Slowglow.Circuits.Building;
using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Sheets.Parts.OpAmp;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Where op-amps slew: a sine of V volts rms at f asks for 2 pi f sqrt(2) V volts a second at its steepest. The volts at each op-amp's
/// output are those of the small signal: up to the slew rate nothing else bends them.
/// </summary>
internal sealed class SlewQuestion
{
    private const double HighestHertz = 1e6;
    private const int Halvings = 30;
    private readonly Fixtures.PathFixture path;
    private readonly SignalSweep sweep;
    private readonly (int Element, int Row, double Slew)[] opAmps;
    private readonly AskedWorld asked;

    public SlewQuestion(AskedWorld asked, Fixtures.PathFixture path)
    {
        (this.asked, this.path) = (asked, path);
        sweep = new SignalSweep(asked, path);
        var slews = asked.Circuit.Sheet.Parts.OfType<OpAmpPart>().ToDictionary(p => p.Designator, p => p.Device["slew"]);
        opAmps =
        [
            .. asked
                .Circuit.Equations.Elements.Select((e, k) => (e, k))
                .Where(e => e.e.Law is OpAmpLaw && slews.ContainsKey(asked.Parts.OfElement(e.k)))
                .Select(e => (e.k, e.e.Rows[2], slews[asked.Parts.OfElement(e.k)])),
        ];
    }

    /// <summary>The op-amp that slews first at a frequency; null where none carries the signal.</summary>
    public SlewLimit? At(double hertz)
    {
        var x = sweep.At(hertz).Driven();
        SlewLimit? first = null;
        foreach (var (element, row, slew) in opAmps.Where(o => o.Row >= 0))
        {
            var generator = slew / (2 * Math.PI * hertz * Math.Sqrt(2) * x[row].Magnitude);
            if (double.IsFinite(generator) && !(generator >= first?.GeneratorVolts))
            {
                var output = path.Out < 0 ? 0 : generator * x[path.Out].Magnitude;
                first = new(asked.Parts.OfElement(element), asked.Parts.NameOfElement(element), hertz, generator, output);
            }
        }

        return first;
    }

    /// <param name="clean">Clean limit at 1 kHz, volts rms at the output; NaN when there is none.</param>
    public HeadroomPoint Headroom(double hertz, double clean)
    {
        var gain = path.Out < 0 ? 0 : sweep.At(hertz).Driven()[path.Out].Magnitude;
        var slews = At(hertz);
        return slews is not null && !(slews.OutputVolts >= clean)
            ? new(hertz, slews.GeneratorVolts, slews.OutputVolts, slews.Element)
            : new(hertz, clean / gain, clean, null);
    }

    /// <summary>The lowest frequency at which the clean output is more than an op-amp can follow; null below 1 MHz without one.</summary>
    public SlewLimit? FullOutput(double clean)
    {
        bool Slews(double hertz) => At(hertz) is { } s && s.OutputVolts < clean;
        double low = 1,
            high = HighestHertz;
        if (!double.IsFinite(clean) || !Slews(high))
        {
            return null;
        }

        for (var n = 0; n < Halvings; n++)
        {
            var middle = Math.Sqrt(low * high);
            (low, high) = Slews(middle) ? (low, middle) : (middle, high);
        }

        return At(high);
    }
}
