using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Jobs;

/// <summary>
/// Takes down what the meter says in a step of a power-up: an ordinary reading of the job, in a setup of the job that stands as the step does.
/// </summary>
public sealed class TakeStepReading(OpenJob open, DescribeSetup describe, TakeReading take)
{
    private static readonly string[] NotHere = ["on", "meter", "="];

    /// <summary>Two figures typed at once must not describe the same setup twice.</summary>
    private readonly SemaphoreSlim one = new(1, 1);

    /// <param name="jobNumber">The job.</param>
    /// <param name="stands">How the bench stands; described in the job where it has no such setup yet.</param>
    /// <param name="probe">Where, and what kind.</param>
    /// <param name="figure">What the meter says: <c>62</c>, <c>4k7</c>, <c>85 mA</c>, <c>OL</c>.</param>
    /// <param name="unit">Unit of a bare figure: <c>V</c>, <c>mA</c>, <c>ohm</c>.</param>
    public async Task<Parsed<StandingReading>> RunAsync(
        int jobNumber,
        Setup stands,
        Probe probe,
        string figure,
        string unit,
        CancellationToken cancel = default
    )
    {
        figure = figure.Trim();
        if (figure.Length == 0 || figure.Split(' ').Any(w => NotHere.Contains(w.ToLowerInvariant())))
        {
            return Wrong(
                figure.Length == 0 ? "Nothing was typed." : $"\"{figure}\" says more than what the meter shows.",
                $"The figure alone: 62, 4k7, OL. Without a unit it is taken as {unit}."
            );
        }

        var opened = await open.RunAsync(jobNumber, cancel);
        if (opened.Value?.Unit is not { } bench)
        {
            return new(null, opened.Findings);
        }

        var line = $"{probe.Where} = {Figure(figure, probe, unit)}";
        if (ReadingsReader.ReadLine(line, bench.Sheet, [stands]) is { HasErrors: true } wrong)
        {
            // Nothing is described for a figure that cannot be read.
            return new(null, [.. wrong.Findings.Select(f => f with { Place = Place.None })]);
        }

        var setup = await SetupAsync(jobNumber, stands, cancel);
        return setup.Value is { } there
            ? await take.RunAsync(jobNumber, $"{line} on {there.Name}", cancel)
            : new(null, setup.Findings);
    }

    /// <summary>True when a reading was taken while the bench stood so, by whatever name.</summary>
    public static bool IsIn(StandingReading reading, Setup stands) =>
        SetupKeys.Write(reading.Reading.Setup) == SetupKeys.Write(stands);

    private async Task<Parsed<Setup>> SetupAsync(int jobNumber, Setup stands, CancellationToken cancel)
    {
        await one.WaitAsync(cancel);
        try
        {
            var opened = await open.RunAsync(jobNumber, cancel);
            return opened.Value is { } job ? await SetupAsync(job, stands, cancel) : new(null, opened.Findings);
        }
        finally
        {
            one.Release();
        }
    }

    private async Task<Parsed<Setup>> SetupAsync(OpenedJob job, Setup stands, CancellationToken cancel)
    {
        if (job.Setups.FirstOrDefault(s => SetupKeys.Write(s) == SetupKeys.Write(stands)) is { } known)
        {
            return new(known, []);
        }

        var name = stands.Name;
        for (var k = 2; job.Setups.Any(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase)); k++)
        {
            name = FormattableString.Invariant($"{stands.Name}-{k}");
        }

        return await describe.RunAsync(job.Job.Number, name, SetupKeys.Write(stands), cancel);
    }

    private static string Figure(string figure, Probe probe, string unit)
    {
        var bare = figure.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or '-' or '+' or '<' or '>' or ' ');
        return $"{figure}{(bare && probe.Kind != ProbeKind.Ohm ? " " + unit : "")} {probe.KindText}";
    }

    private static Parsed<StandingReading> Wrong(string text, string remedy) =>
        new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
