using Slowglow.Sheets;
using Slowglow.Sheets.Setups;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Describes a new named setup.</summary>
public sealed class DescribeSetup(OpenJob open, TimelineWriter timeline)
{
    /// <param name="name">One word that no setup of the job has yet.</param>
    /// <param name="keys">As in a readings document: <c>mains: 110 V, limiter: 40 W, valves: out</c>.</param>
    public async Task<Parsed<Setup>> RunAsync(int jobNumber, string name, string keys, CancellationToken cancel = default)
    {
        name = name.Trim();
        keys = SetupsReader.Understand(keys);
        var opened = await open.RunAsync(jobNumber, cancel);
        if (opened.Value?.Unit is not { } unit)
        {
            return new(null, opened.Findings);
        }

        if (opened.Value.Setups.Any(s => string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase)))
        {
            const string remedy = "Readings may have been taken in it, so it keeps its meaning: choose another name.";
            return new(null, [new(Severity.Error, Place.None, $"There is a setup \"{name}\" already.", remedy)]);
        }

        var read = SetupsReader.ReadOne(name, keys, unit.Sheet);
        if (read.Value is null)
        {
            return read;
        }

        var stored = await StoreAsync(jobNumber, opened.Value, name, keys, cancel);
        return stored.Value is null ? new(null, stored.Findings) : read;
    }

    private async Task<Parsed<TimelineEntry>> StoreAsync(
        int jobNumber,
        OpenedJob job,
        string name,
        string keys,
        CancellationToken cancel
    )
    {
        // The unwritten default is written down first, so that the new one does not take its place.
        if (job.Standing.Setups.Count == 0)
        {
            var first = await AppendAsync(jobNumber, Setup.Default.Name, SetupKeys.Write(Setup.Default), cancel);
            if (first.Value is null)
            {
                return first;
            }
        }

        return await AppendAsync(jobNumber, name, keys, cancel);
    }

    private Task<Parsed<TimelineEntry>> AppendAsync(int jobNumber, string name, string keys, CancellationToken cancel) =>
        timeline.AppendAsync(
            jobNumber,
            (sequence, at) =>
                new SetupDescribed
                {
                    JobNumber = jobNumber,
                    Sequence = sequence,
                    At = at,
                    Name = name,
                    Keys = keys,
                },
            cancel
        );
}
