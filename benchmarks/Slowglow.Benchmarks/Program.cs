using Slowglow.Benchmarks;

if (args is [FirstAnswer.Argument, var only])
{
    FirstAnswer.Answer(only);
    return;
}

if (args is [FirstAnswer.Nothing])
{
    return;
}

if (args is [FirstAnswer.Alone, .. var cold])
{
    Console.WriteLine(FirstAnswer.Run(cold is [var named] ? named : "kittiwake-15"));
    return;
}

if (args is [SensitivityBenchmark.Argument])
{
    Console.WriteLine(new SensitivityBenchmark(8).Run());
    return;
}

if (args is [RestBenchmark.Argument])
{
    foreach (var alone in new RestBenchmark[] { new(8), new(7, capacitors: true) })
    {
        Console.WriteLine(alone.SingleFaults(600));
        Console.WriteLine(alone.Pairs(600));
    }

    return;
}

if (args is [DiagnosisBenchmark.Argument, .. var asked])
{
    Console.WriteLine(DiagnosisRow.Heading);
    foreach (var folder in asked)
    {
        Console.WriteLine(new DiagnosisBenchmark(folder).Run());
    }

    return;
}

string[] folders = args.Length > 0 ? args : ["kittiwake-15", "saltmarsh-lm2", "heronsgate-m60"];
Console.WriteLine(
    $"{Environment.ProcessorCount} cores, .NET {Environment.Version}, {(IsOptimised() ? "Release" : "DEBUG: figures mean nothing")}"
);
Console.WriteLine();
Console.WriteLine("Resting states, one thread each unless said: invented chains of stages, same laws and tolerance 1e-6");
var rest = new RestBenchmark(8);
var coupled = new RestBenchmark(7, capacitors: true);
Console.WriteLine(rest.SingleFaults(600));
Console.WriteLine(coupled.SingleFaults(600));
Console.WriteLine(rest.Sweep(2000));
Console.WriteLine(new SensitivityBenchmark(8).Run());
Console.WriteLine(rest.Pairs(600));
Console.WriteLine(coupled.Pairs(600));
Console.WriteLine("How cost grows with the circuit:");
foreach (var stages in new[] { 2, 4, 8, 16, 30 })
{
    Console.WriteLine(new RestBenchmark(stages).Growth());
}

Console.WriteLine();
Console.WriteLine(FirstAnswer.Run(folders[0]));
Console.WriteLine();
Console.WriteLine(
    "(c) Worlds: every single fault of a sheet, mains cycle and spreads included, against libngspice settling the same worlds"
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
