using System.Globalization;
using Slowglow.Diagnosis.Priors;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>For what worlds cannot compute: how likely a faulty part of a kind is to earn a word, from practice.csv.</summary>
internal sealed class PracticeWeights
{
    public const double Otherwise = 0.12;
    private readonly Dictionary<(Descriptor, PartKind), double> chances = [];

    private PracticeWeights()
    {
        foreach (var row in EmbeddedTable.Rows("practice.csv"))
        {
            var key = (Enum.Parse<Descriptor>(row[0]), Enum.Parse<PartKind>(row[1]));
            chances[key] = double.Parse(row[2], CultureInfo.InvariantCulture);
        }
    }

    public static PracticeWeights Shipped { get; } = new();

    public double Of(Descriptor descriptor, PartKind kind) => chances.GetValueOrDefault((descriptor, kind), Otherwise);
}
