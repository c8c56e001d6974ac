using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Circuits.Building;

/// <summary>Turns of a secondary that differ from specimen to specimen.</summary>
/// <param name="Part">Designator of the transformer.</param>
/// <param name="Winding">Name of the winding.</param>
/// <param name="Sigma">Relative standard deviation of its turns.</param>
/// <param name="Flux">Unknown that the flux stands in, as volts of the whole first winding.</param>
/// <param name="Volts">Of it, rms, when the core swings in full.</param>
internal sealed record TurnsSpread(string Part, string Winding, double Sigma, int Flux, double Volts)
{
    /// <summary>How far the core swings in a world, as a share of in full: so much a turn more or less counts there.</summary>
    /// <param name="wave">Unknowns over the mains cycle, [step * unknowns + unknown].</param>
    /// <param name="unknowns">Of the circuit.</param>
    public double Share(ReadOnlySpan<float> wave, int unknowns)
    {
        double sum = 0;
        for (var at = Flux; at < wave.Length; at += unknowns)
        {
            sum += (double)wave[at] * wave[at];
        }

        return wave.Length == 0 ? 1 : Math.Sqrt(sum * unknowns / wave.Length) / Volts;
    }

    /// <summary>The sheet with this winding's turns so many standard deviations off.</summary>
    public Sheet Rewound(Sheet sheet, double deviations) =>
        sheet with
        {
            Parts =
            [
                .. sheet.Parts.Select(p =>
                    p is TransformerPart transformer && p.Designator == Part
                        ? transformer with
                        {
                            Windings = [.. transformer.Windings.Select(w => w.Name == Winding ? Wound(w, deviations) : w)],
                        }
                        : p
                ),
            ],
        };

    private Winding Wound(Winding winding, double deviations) =>
        winding with
        {
            SectionVolts = [.. winding.SectionVolts.Select(v => v * Math.Exp(Sigma * deviations))],
        };
}
