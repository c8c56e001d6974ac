using Slowglow.Circuits;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Questions;

/// <summary>What a test point should read in a healthy unit.</summary>
/// <param name="Low">Lower edge of the band that 95 in 100 healthy units read within (tolerances and meter).</param>
/// <param name="High">Upper edge.</param>
public sealed record Expectation(Probe Probe, AnswerKind Kind, double Nominal, double Low, double High, string Unit);
