namespace Slowglow.Solving;

/// <summary>A world linearised at its mean: what conducts, and what current each random parameter pushes where.</summary>
/// <param name="Siemens">Of every branch at rest.</param>
/// <param name="Slopes">Of every element, end to end.</param>
/// <param name="Pushed">Amperes into <see cref="MeanEffects.Rows"/>, end to end.</param>
internal sealed record MeanPoint(double[] Siemens, double[] Slopes, double[] Pushed);
