namespace Slowglow.Power.Rewinding;

/// <summary>A flash test as it went on the wound part.</summary>
/// <param name="Test">As specified.</param>
/// <param name="AppliedVolts">Rms; NaN = not entered.</param>
/// <param name="Held">Null = not tested.</param>
public sealed record FlashCheck(FlashTest Test, double AppliedVolts, bool? Held)
{
    /// <summary>Null until it was tested. Held at fewer volts than specified proves nothing.</summary>
    public bool? Passes => Held is not { } held ? null : held && AppliedVolts >= Test.VoltsRms;

    /// <summary>"passes", "broke down", "too few volts"; empty until it was tested.</summary>
    public string Word =>
        Held switch
        {
            null => "",
            false => "broke down",
            true => Passes == true ? "passes" : "too few volts",
        };
}
