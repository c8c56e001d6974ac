namespace Slowglow.Trials;

/// <summary>A fault that the trade knows, in a unit that nobody has.</summary>
/// <param name="Title">What kind of fault, in the trade's words.</param>
/// <param name="Sheet">Below demo/.</param>
/// <param name="Fault">Beginning of the fault's words.</param>
/// <param name="Complaint">What the customer says, fuse and looks included.</param>
internal sealed record WorkedStory(string Title, string Sheet, string Fault, string Complaint)
{
    private const string Combo = "kittiwake-15/sheet.yaml";
    private const string Head = "sheets/ptarmigan-50.yaml";

    public bool IsFuseBlown => Complaint.Contains("fuse", StringComparison.Ordinal);

    public static readonly WorkedStory[] All =
    [
        new("A coupling capacitor that leaks", Combo, "C20 leaky", "rough and quiet once it is warm"),
        new("A reservoir that has dried out", Combo, "C1 dried", "hums loudly, both channels"),
        new("An anode resistor that has gone open", Combo, "R16 open", "first channel silent, second channel fine"),
        new("A screen resistor that has gone open", Head, "R32 open", "quiet and rough"),
        new("A gassy output valve", Head, "V4 gas", "rough, and gets worse as it warms up"),
        new("A dry joint in the heater wiring", Combo, "V1 heater open", "first channel silent"),
        new("A shorted rectifier behind a blown fuse", Head, "D1 short", "dead, fuse blown"),
        new("Bias gone", Head, "D5 open", "fuse blown"),
        new("An op-amp stuck at its rail", "saltmarsh-lm2/sheet.yaml", "U3 section 1 output stuck high", "silent"),
        new(
            "A bias spreader that is dead",
            "sheets/wheatear-p40.yaml",
            "Q3 c-e short",
            "harsh at low level, crossover distortion"
        ),
        new("A wiper off its track", Combo, "VR3 wiper", "first channel silent, second channel fine"),
        new("A regulator that is starved", "saltmarsh-lm2/sheet.yaml", "C1 dried out, 12", "hums, both channels"),
    ];
}
