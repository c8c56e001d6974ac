using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Magnetising inductance by the same rule as our own solver.</summary>
internal static class Magnetising
{
    private const double UnratedVoltAmperes = 20;
    private const double MagnetisingShare = 0.05;

    /// <summary>Henries of the whole first winding.</summary>
    public static double Henries(TransformerPart part, Mains mains)
    {
        if (part.IsOutput)
        {
            // The whole primary's, brought to the first winding by turns.
            var share =
                part.Windings[0].SectionVolts.Sum() / part.Windings.Where(w => w.IsPrimary).Sum(w => w.SectionVolts.Sum());
            return part.PrimaryHenries * share * share;
        }

        var volts = part.Windings[0].SectionVolts.Sum();
        var rating = double.IsNaN(part.Rating) ? UnratedVoltAmperes : part.Rating;
        return volts / (MagnetisingShare * rating / volts) / (2 * Math.PI * mains.Frequency);
    }
}
