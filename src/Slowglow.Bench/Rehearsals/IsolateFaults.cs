using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// Tries a closed list of known faults on units of a sheet, as the literature of fault dictionaries does: nobody complains, only parts of the list
/// are at fault, and the parts of the list are all that is ranked.
/// </summary>
public sealed class IsolateFaults(BenchUnit unit, IReadOnlyList<HiddenFault> faults)
{
    private static readonly Setup[] Setups = [Setup.Default, Setup.Cold];
    private readonly HashSet<string> listed = [.. faults.SelectMany(f => f.Cures)];

    /// <summary>A unit is called faulty when a reading lies this many standard deviations from the healthy one's.</summary>
    private const double Far = 3;

    /// <param name="each">Units for each fault, each with parts of its own; as many healthy ones as there are faults.</param>
    /// <param name="fixedReadings">Taken in every unit; null to let the program choose, up to <paramref name="most"/>.</param>
    public IsolationReport Run(
        int each,
        int seed,
        IReadOnlyList<Probe>? fixedReadings,
        int most,
        CancellationToken cancel = default
    )
    {
        var random = new Random(seed);
        var results = new List<(HiddenFault Fault, DiagnosisResult Result, int Readings)>();
        var alarms = 0;
        foreach (var fault in Enumerable.Range(0, each).SelectMany(_ => faults))
        {
            if (Specimen.Of(LawDoubt.Of(unit.Sheet, random), random.Next()) is not { } sold)
            {
                continue;
            }
            var cameIn = fault.Fitted is { } fitted ? sold.With(fitted) : sold;
            var hidden = new HiddenUnit(cameIn ?? sold, fault, "", new BenchMeter(MeterClass.Handheld, random));
            var result = Measure(hidden, fixedReadings, most, cancel);
            results.Add((fault, result, hidden.Readings.Count));
            if (results.Count % each == 0)
            {
                var nothing = fault with { Faults = [], Fitted = null };
                var healthy = new HiddenUnit(sold, nothing, "", new BenchMeter(MeterClass.Handheld, random));
                alarms += IsFaulty(Measure(healthy, fixedReadings, most, cancel)) ? 1 : 0;
            }
        }
        return Report(results, (double)alarms * each / results.Count);
    }

    private DiagnosisResult Measure(HiddenUnit hidden, IReadOnlyList<Probe>? fixedReadings, int most, CancellationToken cancel)
    {
        foreach (var probe in fixedReadings ?? [])
        {
            hidden.Measure(probe, Setup.Default);
        }
        var result = Diagnose(hidden, cancel);
        var tried = new HashSet<Choice>();
        while (fixedReadings is null && tried.Count < most && new ProgramChooser().Next(hidden, result, tried) is { } choice)
        {
            tried.Add(choice);
            result = hidden.Measure(choice.Probe, choice.Setup) is null ? result : Diagnose(hidden, cancel);
        }
        return result;
    }

    private DiagnosisResult Diagnose(HiddenUnit hidden, CancellationToken cancel) =>
        unit.Diagnostician.Diagnose(new(null, Setups, [.. hidden.Readings]), null, cancel);

    private static bool IsFaulty(DiagnosisResult result) =>
        result.Readings.Any(r =>
            Math.Abs(r.Deviations) > Far || (r.Reading.Said == MeterSaid.Overload && r.Word != "as expected")
        );

    private Suspect? First(DiagnosisResult result) =>
        result.Suspects.FirstOrDefault(s => s.Second is null && s.Group.Any(listed.Contains));

    private IsolationReport Report(List<(HiddenFault Fault, DiagnosisResult Result, int Readings)> results, double alarms)
    {
        bool IsRight((HiddenFault Fault, DiagnosisResult Result, int) r) =>
            First(r.Result)?.Group.Any(r.Fault.Cures.Contains) == true;
        var right = results.Where(IsRight).ToList();
        return new(
            results.Count,
            results.Average(r => IsFaulty(r.Result) ? 1.0 : 0),
            (double)right.Count / results.Count,
            right.Count == 0 ? double.NaN : right.Average(r => First(r.Result)!.Group.Count(listed.Contains)),
            results.Average(r => r.Readings),
            alarms,
            [
                .. results
                    .Where(r => !IsRight(r))
                    .GroupBy(r => r.Fault.Words)
                    .Select(g => (g.Key, g.Count()))
                    .OrderByDescending(g => g.Item2),
            ]
        );
    }
}
