namespace Slowglow.Sheets.Setups;

/// <summary>How the bench stands while readings are taken.</summary>
public sealed record Setup
{
    public required string Name { get; init; }

    /// <summary>Mains volts rms; null = the sheet's.</summary>
    public double? MainsVolts { get; init; }

    /// <summary>Watts of the limiter lamp at the sheet's mains volts; null = no limiter.</summary>
    public double? LimiterWatts { get; init; }
    public bool PowerOff { get; init; }

    /// <summary>All valves but rectifiers pulled.</summary>
    public bool ValvesOut { get; init; }

    /// <summary>Designators pulled from their sockets.</summary>
    public IReadOnlyList<string> Pulled { get; init; } = [];

    /// <summary>Switch name to position.</summary>
    public IReadOnlyDictionary<string, string> Switches { get; init; } = new Dictionary<string, string>();

    /// <summary>Control name to rotation, 0 to 1.</summary>
    public IReadOnlyDictionary<string, double> Controls { get; init; } = new Dictionary<string, double>();

    /// <summary>Load at the output, ohms; infinity = none; null = the sheet's.</summary>
    public double? LoadOhms { get; init; }

    /// <summary>Legs lifted: "R5" (its .1) or "R5.2".</summary>
    public IReadOnlyList<string> Lifted { get; init; } = [];

    /// <summary>What is plugged into the signal inputs.</summary>
    public InputState Input { get; init; }

    /// <summary>Name of the signal path driven; null = the first.</summary>
    public string? Channel { get; init; }

    /// <summary>Sheet mains, nothing pulled, nothing lifted.</summary>
    public static Setup Default { get; } = new() { Name = "bench" };

    /// <summary>Power off.</summary>
    public static Setup Cold { get; } = new() { Name = "cold", PowerOff = true };
}
