using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Magnetising inductance by the same rule as our own solver.</summary>
internal static class Magnetising
{
    private const double UnratedVoltAmperes = 20;
    private const double MagnetisingShare = 0.05;
    private const double LowestHertz = 30;

    /// <summary>Henries of one volt's worth (or one relative turn) of winding.</summary>
    public static double PerTurn(TransformerPart part, Mains mains)
    {
        var turns = part.Windings[0].SectionVolts.Sum();
        return OfFirstWinding(part, mains, turns) / (turns * turns);
    }

    private static double OfFirstWinding(TransformerPart part, Mains mains, double volts)
    {
        if (part.IsOutput)
        {
            throw new NotSupportedException("impedance rule to come");
        }

        var rating = double.IsNaN(part.Rating) ? UnratedVoltAmperes : part.Rating;
        return volts / (MagnetisingShare * rating / volts) / (2 * Math.PI * mains.Frequency);
    }
}
