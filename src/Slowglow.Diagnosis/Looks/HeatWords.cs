using Slowglow.Circuits;
using Slowglow.Quantities;

namespace Slowglow.Diagnosis.Looks;

/// <summary>Says what heat a part makes in a world.</summary>
internal static class HeatWords
{
    public static string? Of(string part, PartStress? stress)
    {
        if (stress is null)
        {
            return null;
        }
        var watts = $"{part} would turn {Engineering.Format(stress.Watts, "W", 2)} into heat";
        return double.IsNaN(stress.WattsRatio) ? watts
            : stress.WattsRatio < 1 ? $"{watts}, within its rating"
            : $"{watts}, {Engineering.Format(stress.WattsRatio, "times", 2)} its rating";
    }
}
