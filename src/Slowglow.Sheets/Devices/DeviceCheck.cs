using System.Globalization;

namespace Slowglow.Sheets.Devices;

/// <summary>Checks a device whole, whether it came with the program or stands in somebody's sheet.</summary>
public static class DeviceCheck
{
    /// <summary>What is wrong with the device, each in words for the person who wrote it; empty when it can be used.</summary>
    public static IReadOnlyList<string> Problems(Device device)
    {
        var found = new List<string>();
        if (string.IsNullOrWhiteSpace(device.Type))
        {
            found.Add("the type number is empty");
        }

        if (string.IsNullOrWhiteSpace(device.Source))
        {
            found.Add("the source of the figures is not named");
        }

        found.AddRange(LawProblems(device));
        found.AddRange(SpreadProblems(device));
        found.AddRange(device.Limits.Where(l => !(l.Value > 0)).Select(l => $"limit {l.Key} must be above zero"));
        found.AddRange(Electrodes.Problems(device));
        return found;
    }

    private static IEnumerable<string> LawProblems(Device device)
    {
        foreach (var constant in LawConstants.Of(device.Kind))
        {
            if (!device.Law.TryGetValue(constant, out var value))
            {
                yield return $"the constant {constant} is missing";
            }
            else if (!LawConstants.IsSensible(constant, value))
            {
                yield return $"the constant {constant} cannot be {value.ToString(CultureInfo.InvariantCulture)}";
            }
        }

        foreach (var besides in LawConstants.Besides(device.Kind).Where(device.Law.ContainsKey))
        {
            if (!LawConstants.IsSensible(besides, device.Law[besides]))
            {
                yield return $"the constant {besides} cannot be {device.Law[besides].ToString(CultureInfo.InvariantCulture)}";
            }
        }

        foreach (var stray in device.Law.Keys.Except(LawConstants.Of(device.Kind)).Except(LawConstants.Besides(device.Kind)))
        {
            yield return $"the law has no constant {stray}";
        }
    }

    private static IEnumerable<string> SpreadProblems(Device device)
    {
        foreach (var (constant, sigma) in device.Spread)
        {
            if (!device.Law.ContainsKey(constant))
            {
                yield return $"spread is given for {constant}, which the law does not have";
            }
            else if (sigma is not (> 0 and < 1))
            {
                yield return $"the spread of {constant} must lie between 0 and 1";
            }
        }
    }
}
