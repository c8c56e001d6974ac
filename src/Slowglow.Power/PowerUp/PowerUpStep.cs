using Slowglow.Sheets.Setups;

namespace Slowglow.Power.PowerUp;

/// <summary>One step of bringing a unit up.</summary>
/// <param name="Title">"Half mains on the lamp, valves out".</param>
/// <param name="Do">What to set, in a sentence.</param>
/// <param name="Setup">How the bench stands.</param>
/// <param name="Points">What each point should read now.</param>
/// <param name="LampShare">Of its watts that the lamp takes; NaN without a lamp.</param>
/// <param name="LampLight">Of its light.</param>
/// <param name="StopAmps">Inlet current above which to switch off at once; NaN with the power off.</param>
/// <param name="Signs">What it means when it does not read so.</param>
public sealed record PowerUpStep(
    string Title,
    string Do,
    Setup Setup,
    IReadOnlyList<PowerPoint> Points,
    double LampShare,
    double LampLight,
    double StopAmps,
    IReadOnlyList<PowerSign> Signs
)
{
    public bool HasLamp => Setup.LimiterWatts is not null;

    /// <summary>Signs that share most with what the meter shows; empty while everything reads as it should.</summary>
    /// <param name="shown">Points with what was read there, base units.</param>
    public IReadOnlyList<PowerSign> SignsOf(IEnumerable<(PowerPoint Point, double Value)> shown)
    {
        string[] looks = [.. shown.Select(s => s.Point.LooksWith(s.Value, HasLamp)).OfType<string>()];
        var scored = Signs.Select(s => (Sign: s, Shared: looks.Count(s.Looks.Split(", ").Contains))).ToArray();
        var most = scored.Select(s => s.Shared).DefaultIfEmpty(0).Max();
        return most == 0 ? [] : [.. scored.Where(s => s.Shared == most).Select(s => s.Sign)];
    }

    /// <summary>True when the inlet takes so much that the unit has to be switched off.</summary>
    public bool Stops(PowerPoint point, double value) => point.Probe.IsInlet && value > StopAmps;
}
