namespace Slowglow.Power.Rewinding;

/// <summary>A measured line that cannot be; caught where the line is read and turned into a finding.</summary>
internal sealed class MeasuredException(string message, string remedy) : Exception(message)
{
    public string Remedy => remedy;
}
