using System.Globalization;
using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals;

namespace Slowglow.Trials;

/// <summary>The published filters: how far a handheld meter and the program tell their faults apart.</summary>
internal static class Filters
{
    private const int MostReadings = 12;

    public static void Write(TextWriter output, string folder, int each)
    {
        output.WriteLine(
            "| circuit and faults | readings | units | detected | isolated | parts in the first group | readings taken | false alarms |"
        );
        output.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- |");
        var variable = Open(folder, "state-variable");
        string[] passive = ["R1", "R2", "R3", "R4", "R5", "R6", "R7", "C1", "C2"];
        string[] amps = ["U1", "U2", "U3"];
        double[] around = [100, 300, 560, 800, 1100, 1600, 3000];
        IReadOnlyList<HiddenFault> soft =
        [
            .. PublishedFilter.Soft(variable.Sheet, passive.Take(7), 0.82, 1.18),
            .. PublishedFilter.Soft(variable.Sheet, ["C1"], 0.7, 1.3),
            .. PublishedFilter.Soft(variable.Sheet, ["C2"], 0.82, 1.18),
        ];
        IReadOnlyList<HiddenFault> hard = [.. PublishedFilter.Hard(passive), .. PublishedFilter.OpAmps(variable.Circuit, amps)];
        Try(output, "state-variable, hard", variable, hard, ["LP"], around, each);
        Try(output, "state-variable, hard", variable, hard, ["HP", "BP", "LP"], around, each);
        Try(output, "state-variable, soft (6 sigmas)", variable, soft, ["LP"], around, each);
        Try(output, "state-variable, soft (6 sigmas)", variable, soft, ["HP", "BP", "LP"], around, each);
        var band = Open(folder, "sallen-key");
        var four = PublishedFilter.Soft(band.Sheet, ["R2", "R3", "C1", "C2"], 0.35, 0.5, 1.5, 1.75);
        Try(output, "Sallen-Key, 50 % and more off", band, four, ["OUT"], [5e3, 10e3, 16e3, 25e3, 40e3, 60e3, 100e3], each);
        var biquad = Open(folder, "biquad");
        var six = PublishedFilter.Soft(biquad.Sheet, ["R1", "R2", "R3", "R4", "C1", "C2"], 0.6, 1.4);
        Try(output, "biquad, 40 % off", biquad, six, ["HP"], [2e3, 5e3, 7e3, 10e3, 14e3, 20e3, 40e3], each);
    }

    private static void Try(
        TextWriter output,
        string name,
        BenchUnit unit,
        IReadOnlyList<HiddenFault> faults,
        string[] nets,
        double[] hertz,
        int each
    )
    {
        var trial = new IsolateFaults(unit, faults);
        Row(
            output,
            name,
            $"level at {string.Join(", ", nets)}, {hertz.Length} frequencies",
            trial.Run(each, 1, PublishedFilter.Levels(nets, hertz), 0)
        );
        if (nets.Length == 1)
        {
            Row(output, name, "the program's choice", trial.Run(each, 1, null, MostReadings));
        }
    }

    private static void Row(TextWriter output, string name, string how, IsolationReport r)
    {
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {name} | {how} | {r.Tried} | {100 * r.Detected:0} % | {100 * r.Isolated:0} % | {r.Group:0.0} | {r.Readings:0.0} | {100 * r.FalseAlarms:0} % |"
            )
        );
        output.WriteLine("<!-- missed: " + string.Join("; ", r.Missed.Take(12).Select(m => $"{m.Words} {m.Times}")) + " -->");
        output.Flush();
    }

    private static BenchUnit Open(string folder, string name) =>
        BenchUnit.From(File.ReadAllText(Path.Combine(folder, $"{name}.yaml"))).Value
        ?? throw new InvalidOperationException($"{name} cannot be used");
}
