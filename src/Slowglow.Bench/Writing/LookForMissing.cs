using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Bench.Writing;

/// <summary>What a sheet still lacks for a diagnosis, worked out from the sheet as it stands.</summary>
internal static class LookForMissing
{
    private const int Named = 4;

    public static IReadOnlyList<StillMissing> In(Sheet sheet) =>
        [Mains(sheet), Active(sheet), Electrodes(sheet), Signal(sheet), Watts(sheet), Volts(sheet), Access(sheet)];

    private static StillMissing Mains(Sheet sheet)
    {
        var inlet = sheet.Parts.SelectMany(p => p.Pins).Select(p => p.Net).ToHashSet();
        var there =
            inlet.Contains(NetTable.Live) && inlet.Contains(NetTable.Neutral) && sheet.Parts.OfType<TransformerPart>().Any();
        return new(
            "Mains: inlet to a transformer",
            there,
            there ? "" : "F1: fuse 250mA MAINS.L -> T1.1 and W1: wire MAINS.N -> T1.2; or put in a supply"
        );
    }

    private static StillMissing Active(Sheet sheet)
    {
        var there = sheet.Parts.Any(IsActive);
        return new("At least one valve, transistor or op-amp", there, there ? "" : "put in a stage");
    }

    /// <summary>
    /// Heaters may be left out, and so may a half that is not used; anything else of an active part that nothing is on is a line not typed yet.
    /// </summary>
    private static StillMissing Electrodes(Sheet sheet)
    {
        var ends = sheet.Parts.SelectMany(p => p.Pins).GroupBy(p => p.Net).ToDictionary(g => g.Key, g => g.Count());
        var open = sheet
            .Parts.Where(IsActive)
            .SelectMany(p =>
                InUse(p, ends).Where(e => ends[e.Net] == 1).Select(e => $"{p.Designator}.{e.Number} ({e.Electrode})")
            )
            .ToList();
        return List("Every electrode leads somewhere", open, "nothing is on");
    }

    /// <summary>Electrodes of the halves that something is on, and what they share, as supplies; all of them while nothing is on any.</summary>
    private static IEnumerable<Pin> InUse(Part part, Dictionary<string, int> ends)
    {
        var device = part switch
        {
            ValvePart valve => valve.Device,
            OpAmpPart chip => chip.Device,
            _ => null,
        };
        var sections = device?.Pinout.DistinctBy(p => p.Number).ToDictionary(p => p.Number, p => p.Section) ?? [];
        var halves = part
            .Pins.Where(e => e.Electrode.Length > 0 && e.Electrode[0] is not ('h' or 'f'))
            .ToLookup(e => sections.GetValueOrDefault(e.Number));
        var used = halves.Where(h => h.Key > 0 && h.Any(e => ends[e.Net] > 1)).Select(h => h.Key).ToHashSet();
        return halves.Where(h => h.Key == 0 || used.Count == 0 || used.Contains(h.Key)).SelectMany(h => h);
    }

    private static StillMissing Signal(Sheet sheet)
    {
        var there = sheet.Signals.Count > 0;
        return new("A signal path", there, there ? "" : "signal: { in: IN, out: OUT, source: 10k, level: 100 mV }");
    }

    private static StillMissing Watts(Sheet sheet) =>
        List(
            "Watts of resistors",
            [.. sheet.Parts.OfType<ResistorPart>().Where(p => double.IsNaN(p.RatedWatts)).Select(p => p.Designator)],
            "as the drawing or the part says, 1W, of"
        );

    private static StillMissing Volts(Sheet sheet) =>
        List(
            "Volts of capacitors",
            [.. sheet.Parts.OfType<CapacitorPart>().Where(p => double.IsNaN(p.RatedVolts)).Select(p => p.Designator)],
            "as the drawing or the part says, 400V, of"
        );

    private static StillMissing Access(Sheet sheet)
    {
        var there = sheet.Points.Count > 0;
        return new("Points that are easy or hard to reach", there, there ? "" : "points: and under it HT1: { access: 1 min }");
    }

    private static StillMissing List(string text, List<string> which, string remedy)
    {
        var rest = which.Count > Named ? $" and {which.Count - Named} more" : "";
        return new(text, which.Count == 0, which.Count == 0 ? "" : $"{remedy} {string.Join(", ", which.Take(Named))}{rest}");
    }

    private static bool IsActive(Part part) => part is ValvePart or TransistorPart or OpAmpPart;
}
