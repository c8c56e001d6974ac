using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Rehearsals;

/// <summary>Hides faults in units of one sheet. The same seed and number give the same unit, whatever was asked for before.</summary>
public sealed class HiddenUnits
{
    private const int AtOnce = 6;
    private const int MostDraws = 40;

    private readonly BenchUnit unit;
    private readonly IReadOnlyList<Story> stories;
    private readonly int seed;
    private readonly ComplaintWriter writer;

    /// <summary>Works out the stories of the sheet, which takes as long as a first diagnosis.</summary>
    public HiddenUnits(BenchUnit unit, int seed, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        (this.unit, this.seed) = (unit, seed);
        stories = unit.Diagnostician.Stories(progress, cancel);
        writer = new ComplaintWriter(unit.Sheet);
    }

    /// <summary>A unit that somebody has a complaint about; null when no draw of that kind gave one.</summary>
    public HiddenUnit? Hide(int number, HiddenKind kind, FaultDraw draw, CancellationToken cancel = default)
    {
        var random = new Random(SeedOf(number, kind, draw));
        return kind is HiddenKind.WrongValue or HiddenKind.Bridged
            ? HideWrongPart(kind, random, cancel)
            : HideFaults(kind, draw, random, cancel);
    }

    /// <summary>A unit with this very fault, its fuse blown or not, and what somebody says of it; null when the drawn unit cannot be solved.</summary>
    public HiddenUnit? HideThis(Fault fault, bool isFuseBlown, string complaint)
    {
        var random = new Random(seed);
        IReadOnlyList<Fault> faults =
            stories.FirstOrDefault(s => s.Faults[0] == fault && s.Faults.Count > 1 == isFuseBlown)?.Faults ?? [fault];
        return new SpecimenMaker(unit.Sheet, random).Make(null) is var (_, cameIn)
            ? new(
                cameIn,
                new(HiddenKind.Single, faults, null, [fault.Part], Words(faults)),
                complaint,
                new BenchMeter(MeterClass.Handheld, random)
            )
            : null;
    }

    private int SeedOf(int number, HiddenKind kind, FaultDraw draw) =>
        unchecked((((((seed * 397) + number) * 397) + (int)kind) * 397) + (int)draw);

    private HiddenUnit? HideFaults(HiddenKind kind, FaultDraw draw, Random random, CancellationToken cancel)
    {
        var hat = new FaultHat(stories, random);
        if (new SpecimenMaker(unit.Sheet, random).Make(null) is not var (sold, cameIn))
        {
            return null;
        }
        for (var done = 0; done < MostDraws; done += AtOnce)
        {
            HiddenFault[] drawn =
            [
                .. Enumerable.Range(0, AtOnce).Select(_ => kind == HiddenKind.Double ? Two(hat, draw) : One(hat, draw)),
            ];
            var said = writer.Of(new Customer(random), sold.Worlds, cameIn.Worlds, [.. drawn.Select(d => d.Faults)], cancel);
            var heard = Array.FindIndex([.. said], s => s is not null);
            if (heard >= 0)
            {
                return new(cameIn, drawn[heard], said[heard]!, new BenchMeter(MeterClass.Handheld, random));
            }
        }
        return null;
    }

    private HiddenUnit? HideWrongPart(HiddenKind kind, Random random, CancellationToken cancel)
    {
        var wrong = new WrongParts(unit.Sheet, random);
        for (var done = 0; done < MostDraws; done++)
        {
            if (wrong.Draw(kind) is { } hidden && new SpecimenMaker(unit.Sheet, random).Make(hidden.Fitted) is var (sold, cameIn))
            {
                if (writer.Of(new Customer(random), sold.Worlds, cameIn.Worlds, [hidden.Faults], cancel)[0] is { } complaint)
                {
                    return new(cameIn, hidden, complaint, new BenchMeter(MeterClass.Handheld, random));
                }
            }
        }
        return null;
    }

    private static HiddenFault One(FaultHat hat, FaultDraw draw)
    {
        var faults = hat.Draw(draw);
        return new(HiddenKind.Single, faults, null, [faults[0].Part], Words(faults));
    }

    private static HiddenFault Two(FaultHat hat, FaultDraw draw)
    {
        var first = hat.Draw(draw);
        var second = hat.Draw(draw);
        while (second[0].Part == first[0].Part)
        {
            second = hat.Draw(draw);
        }
        IReadOnlyList<Fault> both = [.. first.Concat(second).DistinctBy(f => f.Part)];
        return new(HiddenKind.Double, both, null, [first[0].Part, second[0].Part], Words(both));
    }

    private static string Words(IEnumerable<Fault> faults) => string.Join(" + ", faults);
}
