using Slowglow.Drawing;

namespace Slowglow.Bench.Questions;

/// <summary>A unit drawn.</summary>
/// <param name="Svg">The drawing as one SVG document.</param>
/// <param name="Crossings">Places where two wires cross.</param>
/// <param name="Tags">Net names standing in for wires.</param>
/// <param name="Layout">To write other figures on without anything moving.</param>
public sealed record UnitDrawing(string Svg, int Crossings, int Tags, DrawingLayout Layout);
