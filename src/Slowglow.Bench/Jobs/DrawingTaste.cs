using Slowglow.Drawing;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Jobs;

/// <summary>How the shop wants its drawings.</summary>
public static class DrawingTaste
{
    public static DrawingStyle DrawingStyle(this ShopSettings settings) => new(settings.Rules?.ZigzagResistors ?? false);
}
