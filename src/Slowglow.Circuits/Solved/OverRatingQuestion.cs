using Slowglow.Quantities;

namespace Slowglow.Circuits.Solved;

/// <summary>Parts over their ratings, worst first.</summary>
internal static class OverRatingQuestion
{
    public static IReadOnlyList<OverRating> Ask(AskedWorld asked)
    {
        var view = new StressView(asked.Circuit, asked.State);
        var stress = asked.Circuit.Models.Select(m => m.Stress(view)).OfType<PartStress>();
        return [.. stress.SelectMany(Of).OrderByDescending(o => o.Ratio)];
    }

    private static IEnumerable<OverRating> Of(PartStress s)
    {
        if (s.WattsRatio > 1)
        {
            yield return Say(s.Part, "W", s.Watts, s.WattsRatio, "turns", "into heat");
        }

        if (s.VoltsRatio > 1)
        {
            yield return Say(s.Part, "V", s.Volts, s.VoltsRatio, "has", "across it");
        }

        if (s.AmpsRatio > 1)
        {
            yield return Say(s.Part, "A", s.AmpsRms, s.AmpsRatio, "carries", "");
        }
    }

    private static OverRating Say(string part, string unit, double value, double ratio, string does, string where)
    {
        var figure = Engineering.Format(value, unit, 3);
        var times = ratio < 1.05 ? "just over" : Engineering.Format(ratio, "times", ratio < 2 ? 3 : 2);
        return new(part, unit, value, ratio, $"{part} {does} {figure} {where}".TrimEnd() + $", {times} its rating");
    }
}
