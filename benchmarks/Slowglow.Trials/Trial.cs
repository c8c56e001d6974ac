using System.Diagnostics;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Trials;

/// <summary>Gives the program a complaint and then its own next readings, and sees where the true part ends up.</summary>
internal sealed class Trial(Diagnostician diagnostician, int mostReadings)
{
    public TrialResult Run(HiddenUnit unit, string complaint)
    {
        Setup[] setups = [Setup.Default, Setup.Cold];
        var readings = new List<Reading>();
        var story = new List<string>();
        double minutes = 0;
        double worstUpdate = 0;
        var result = diagnostician.Diagnose(new(complaint, setups, readings));
        while (readings.Count < mostReadings && result.Next.Count > 0)
        {
            var next = result.Next.FirstOrDefault(n => !readings.Any(r => r.Probe == n.Probe && r.Setup == n.Setup));
            if (next is null || unit.Read(next.Probe, next.Setup) is not { } reading)
            {
                break;
            }
            readings.Add(reading);
            minutes += next.Minutes;
            story.Add(
                $"{reading.Probe.Where} {reading.Probe.KindText} on {reading.Setup.Name} = {reading.Value:G4} {reading.Probe.Unit}"
            );
            var clock = Stopwatch.StartNew();
            result = diagnostician.Diagnose(new(complaint, setups, [.. readings]));
            worstUpdate = Math.Max(worstUpdate, clock.Elapsed.TotalMilliseconds);
        }
        return Judge(unit, complaint, result, readings.Count, minutes, worstUpdate, story);
    }

    private static TrialResult Judge(
        HiddenUnit unit,
        string complaint,
        DiagnosisResult result,
        int readings,
        double minutes,
        double worstUpdate,
        List<string> story
    )
    {
        var rank = result.Suspects.ToList().FindIndex(s => s.Group.Contains(unit.Part)) + 1;
        var first = result.Suspects[0];
        return new(
            unit.Faults,
            complaint,
            rank == 0 ? int.MaxValue : rank,
            first.Part,
            first.Probability,
            first.Group.Count,
            result.NoneOfThese,
            readings,
            minutes,
            worstUpdate,
            story
        );
    }
}
