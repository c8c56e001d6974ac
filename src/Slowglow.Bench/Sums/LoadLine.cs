namespace Slowglow.Bench.Sums;

/// <summary>Anode characteristics of a valve with the load line of its stage.</summary>
/// <param name="SupplyVolts">Where the line meets no current; the paper's width.</param>
/// <param name="MostAmps">The paper's height.</param>
/// <param name="Curves">Grid volts, and anode amperes at evenly spaced anode volts from 0 to the supply.</param>
/// <param name="LoadOhms">Of the line: anode and cathode resistor.</param>
/// <param name="AnodeVolts">At rest, against the cathode.</param>
/// <param name="AnodeAmps">At rest.</param>
/// <param name="SwingVolts">Largest clean swing to either side, volts peak; 0 when not known.</param>
public sealed record LoadLine(
    double SupplyVolts,
    double MostAmps,
    IReadOnlyList<(double GridVolts, double[] Amps)> Curves,
    double LoadOhms,
    double AnodeVolts,
    double AnodeAmps,
    double SwingVolts
);
