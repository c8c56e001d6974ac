using Slowglow.Bench.Questions;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals.Practice;

/// <summary>A reading of the learner's.</summary>
/// <param name="Setup">As the bench stood: in use, or with the power off for ohms and diode tests.</param>
/// <param name="Shown">What the meter said; null when it never came to rest.</param>
/// <param name="Belongs">What a healthy unit would show.</param>
public sealed record PracticeReading(Probe Probe, Setup Setup, Reading? Shown, Expectation Belongs, double Minutes)
    : PracticeStep(Minutes);
