using System.Globalization;
using Slowglow.Sheets.Devices;

namespace Slowglow.Tests.Devices;

/// <summary>Every row of tests/reference/valve_capacitances.csv (its source column) against the device library.</summary>
public sealed class CapacitanceTests
{
    public static TheoryData<string, double, double, double> Rows()
    {
        var data = new TheoryData<string, double, double, double>();
        foreach (
            var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "valve_capacitances.csv")).Skip(1)
        )
        {
            var f = line.Split(',');
            double N(int k) => double.Parse(f[k], CultureInfo.InvariantCulture);
            data.Add(f[0], N(2), N(4), N(5));
        }

        return data;
    }

    /// <summary>Output of two units of an envelope, and of two makers, within 0.2 pF; the rest within 0.2 pF too.</summary>
    [Theory]
    [MemberData(nameof(Rows))]
    public void The_library_has_what_the_makers_print(string valve, double anodeToGrid, double input, double output)
    {
        var law = DeviceLibrary.Shipped.Find(valve)!.Law;
        Assert.Equal(anodeToGrid, law["cga"] * 1e12, 0.001);
        Assert.Equal(input, law["cgk"] * 1e12, 0.21);
        Assert.Equal(output, law["cak"] * 1e12, 0.21);
    }
}
