using System.Diagnostics;
using System.Globalization;
using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.ReferenceSolver;

namespace Slowglow.Benchmarks;

/// <summary>
/// (f): from the first line of a cold process to the first expectation of a demo sheet; and the whole command that a user types, from the start of its process
/// to the end, beside a program that does nothing.
/// </summary>
internal static class FirstAnswer
{
    public const string Argument = "first-answer";
    public const string Nothing = "nothing";
    public const string Alone = "cold";
    private const int Runs = 9;

    /// <summary>In the cold process: says the milliseconds.</summary>
    public static void Answer(string folder)
    {
        var watch = Stopwatch.StartNew();
        var circuit = Circuit.From(DemoSheets.Read(folder)).Value!;
        var net = circuit.Sheet.Nets.Names.First(n => n != NetTable.Ground);
        var probe = new Probe(net, net, NetTable.Ground, ProbeKind.Dc);
        new Worlds(circuit).Ask(Setup.Default, [Array.Empty<Fault>()], [probe], MeterClass.Handheld);
        Console.WriteLine(watch.Elapsed.TotalMilliseconds.ToString("0", CultureInfo.InvariantCulture));
    }

    public static string Run(string folder)
    {
        var (ours, command, nothing) = (new List<double>(), new List<double>(), new List<double>());
        var sheet = Path.Combine(DemoSheets.Root(), "demo", folder, "sheet.yaml");
        for (var i = 0; i < Runs; i++)
        {
            ours.Add(double.Parse(Process(Own, Argument, folder).Said, CultureInfo.InvariantCulture));
            command.Add(Process(Command(), "expect", sheet).Milliseconds);
            nothing.Add(Process(Own, Nothing).Milliseconds);
        }

        return $"""
            (f) first answer of {folder} in a cold process, from its first line: {Best(ours)}
                slowglow expect of the same sheet, whole process: {Best(command)}; a process that does nothing: {Best(nothing)}
            """;
    }

    private static string Own => typeof(FirstAnswer).Assembly.Location;

    /// <summary>The command as the normal build leaves it.</summary>
    private static string Command() =>
        Path.Combine(DemoSheets.Root(), "src", "Slowglow.Cli", "bin", "Release", "net10.0", "slowglow.dll");

    private static string Best(List<double> runs)
    {
        runs.Sort();
        return FormattableString.Invariant($"{runs[0]:0} ms at best, {runs[runs.Count / 2]:0} ms median of {runs.Count}");
    }

    private static (double Milliseconds, string Said) Process(params string[] words)
    {
        var watch = Stopwatch.StartNew();
        var start = new ProcessStartInfo("dotnet", ["exec", .. words]) { RedirectStandardOutput = true };
        using var process = System.Diagnostics.Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd().Trim();
        process.WaitForExit();
        return process.ExitCode == 0
            ? (watch.Elapsed.TotalMilliseconds, said)
            : throw new InvalidOperationException($"{string.Join(' ', words)} ended with {process.ExitCode}");
    }
}
