namespace Slowglow.Power.Rewinding;

/// <summary>Designs mains transformers on E and I laminations.</summary>
public static class TransformerDesigner
{
    /// <summary>Steps in which the wire is thinned until the coil fits.</summary>
    private const double Thinner = 1.05;

    /// <summary>The design on a given core; it may miss limits, which its checks then say.</summary>
    public static WoundDesign On(CoreStack core, TransformerNeed need, DesignLimits limits)
    {
        if (limits.Density is { } density)
        {
            return new DesignRun(core, need, limits, density).Finish();
        }

        for (var trial = limits.LeastDensity; ; trial *= Thinner)
        {
            var design = new DesignRun(core, need, limits, Math.Min(trial, limits.MostDensity)).Finish();
            if (design.Fill <= 1 || trial >= limits.MostDensity)
            {
                return design;
            }
        }
    }

    /// <summary>The lightest standard core on which everything holds; null when none is large enough.</summary>
    public static WoundDesign? Smallest(TransformerNeed need, DesignLimits limits) =>
        CoreStack.Standard.Select(core => On(core, need, limits)).FirstOrDefault(d => d.Fits);
}
