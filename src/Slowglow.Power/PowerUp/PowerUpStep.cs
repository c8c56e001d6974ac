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
);
