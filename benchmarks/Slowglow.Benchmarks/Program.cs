using Slowglow.Benchmarks;

string[] folders = args.Length > 0 ? args : ["kittiwake-15", "saltmarsh-lm2", "heronsgate-m60"];
Console.WriteLine(
    $"{Environment.ProcessorCount} cores, .NET {Environment.Version}, {(IsOptimised() ? "Release" : "DEBUG: figures mean nothing")}"
);
Console.WriteLine();
Console.WriteLine(
    "Worlds: every single fault of a sheet, mains cycle and spreads included, against libngspice settling the same worlds"
);
Console.WriteLine(WorldsRow.Heading);
foreach (var folder in folders)
{
    Console.WriteLine(new WorldsBenchmark(folder).Run());
}

Console.WriteLine();
Console.WriteLine("Diagnosis: from one more reading to updated suspects and the next reading");
Console.WriteLine(DiagnosisRow.Heading);
foreach (var folder in folders)
{
    Console.WriteLine(new DiagnosisBenchmark(folder).Run());
}

static bool IsOptimised() =>
    !typeof(WorldsBenchmark)
        .Assembly.GetCustomAttributes(false)
        .OfType<System.Diagnostics.DebuggableAttribute>()
        .Any(d => d.IsJITOptimizerDisabled);
