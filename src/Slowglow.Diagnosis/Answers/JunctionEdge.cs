using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Answers;

/// <summary>
/// Worlds that stand on an edge. A junction that conducts holds its volts to within some hundredths, whatever the unit; where its tolerances would move it
/// by more, as in an output stage with one half dead, real units are to be found on either side of the edge and not where the nominal one stands.
/// </summary>
internal sealed class JunctionEdge(Sheet sheet)
{
    /// <summary>Volts across a junction that conducts, and how many of spread it cannot have. Judgement.</summary>
    private const double LeastVolts = 0.4;
    private const double MostVolts = 0.9;
    private const double MostSpread = 0.15;

    private readonly HashSet<(string, string)> junctions = [.. sheet.Parts.SelectMany(Junctions)];

    /// <summary>Whether an answer to a probe shows a conducting junction moved further than one can be.</summary>
    public bool IsOnEdge(Probe probe, Answer answer) =>
        probe.Kind == ProbeKind.Dc
        && answer.HasValue
        && Math.Abs(answer.Value) is > LeastVolts and < MostVolts
        && answer.Sigma > MostSpread
        && (junctions.Contains((probe.Red, probe.Black)) || junctions.Contains((probe.Black, probe.Red)));

    private static IEnumerable<(string, string)> Junctions(Part part) =>
        part switch
        {
            DiodePart { Device.Kind: DeviceKind.Diode } => [(part.Pins[0].Net, part.Pins[1].Net)],
            TransistorPart { Device.Kind: DeviceKind.Bjt } => [(part.NetOf("b")!, part.NetOf("e")!)],
            _ => [],
        };
}
