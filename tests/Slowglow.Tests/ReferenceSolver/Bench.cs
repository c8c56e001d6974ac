using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>How the bench stands: the setup with the sheet's own figures where it says nothing.</summary>
internal sealed record Bench(Sheet Sheet, Setup Setup)
{
    /// <summary>What each valve's heater leaves of its emission, where that is not all of it.</summary>
    public IReadOnlyDictionary<string, double> Warmth { get; init; } = new Dictionary<string, double>();

    public ReferenceRun Run { get; init; } = ReferenceRun.Cycle;

    public double MainsVolts => Setup.MainsVolts ?? Sheet.Mains.Volts;

    public double Frequency => Sheet.Mains.Frequency;

    public double Rotation(PotPart pot) =>
        pot.ControlName is { } name && Setup.Controls.TryGetValue(name, out var turned) ? turned : pot.Rotation;

    /// <summary>Position of a switch; the first one named is the default, and a jack has nothing in it.</summary>
    public string Position(string switchName)
    {
        if (Setup.Switches.TryGetValue(switchName, out var position))
        {
            return position;
        }

        return Sheet.Switches.FirstOrDefault(s => s.Name == switchName)?.Positions[0] ?? "out";
    }
}
