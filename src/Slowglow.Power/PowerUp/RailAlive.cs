namespace Slowglow.Power.PowerUp;

/// <summary>From which mains voltage on a regulated rail stands.</summary>
/// <param name="Rail">Net.</param>
/// <param name="Volts">What it holds at nominal mains.</param>
/// <param name="MainsVolts">Lowest mains, rms, at which it is within a twentieth of that; NaN when it never is.</param>
public sealed record RailAlive(string Rail, double Volts, double MainsVolts);
