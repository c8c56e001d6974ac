namespace Slowglow.Circuits;

/// <summary>One part, one failure mode, one severity.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Where">
/// Which portion of the part: "" for the whole; a section ("1", "2"), a pair of electrodes ("b-e", "c-e", "g-k"), a winding ("HT"),
/// "wiper", "top".
/// </param>
/// <param name="Mode">Failure mode.</param>
/// <param name="Severity">Meaning by mode, see <see cref="FailureMode"/>; 0 where unused.</param>
public sealed record Fault(string Part, string Where, FailureMode Mode, double Severity = 0)
{
    /// <summary>In the trade's words: "R5 open", "C4 leaky 470 k", "V1 section 2 low emission 40 %".</summary>
    public override string ToString() => FaultWords.Say(this);
}
