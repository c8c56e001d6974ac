using System.Diagnostics;
using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.ReferenceSolver;

namespace Slowglow.Benchmarks;

/// <summary>(f): from the first line of a cold process to the first expectation of a demo sheet.</summary>
internal static class FirstAnswer
{
    public const string Argument = "first-answer";

    /// <summary>In the cold process: says the milliseconds.</summary>
    public static void Answer(string folder)
    {
        var watch = Stopwatch.StartNew();
        var circuit = Circuit.From(DemoSheets.Read(folder)).Value!;
        var net = circuit.Sheet.Nets.Names.First(n => n != NetTable.Ground);
        var probe = new Probe(net, net, NetTable.Ground, ProbeKind.Dc);
        new Worlds(circuit).Ask(Setup.Default, [Array.Empty<Fault>()], [probe], MeterClass.Handheld);
        Console.WriteLine(watch.Elapsed.TotalMilliseconds.ToString("0", System.Globalization.CultureInfo.InvariantCulture));
    }

    public static string Run(string folder)
    {
        var runs = Enumerable.Range(0, 5).Select(_ => Cold(folder)).Order().ToArray();
        return FormattableString.Invariant(
            $"(f) first answer of {folder} in a cold process: {runs[0]} ms at best, {runs[2]} ms median of 5"
        );
    }

    private static int Cold(string folder)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(FirstAnswer).Assembly.Location, Argument, folder])
        {
            RedirectStandardOutput = true,
        };
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return int.Parse(said.Trim(), System.Globalization.CultureInfo.InvariantCulture);
    }
}
