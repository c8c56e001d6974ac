using Slowglow.Bench.Questions;
using Slowglow.Sheets.Readings;
using Xunit;

namespace Slowglow.Tests.Bench.Questions;

public class MeterErrorTests
{
    private static readonly MeterClass Meter = new("test", 10e6, 0.004, 0.01, 0.006, 6000);

    /// <summary>By hand: 0.4 % of 300 V is 1.2 V, one count of the 600 V range is 0.1 V.</summary>
    [Fact]
    public void Share_and_count_add_as_squares() =>
        Assert.Equal(Math.Sqrt((1.2 * 1.2) + (0.1 * 0.1)), MeterError.Sigma(At(ProbeKind.Dc), 300, Meter), 9);

    [Fact]
    public void Near_nothing_one_count_remains() => Assert.Equal(1e-4, MeterError.Sigma(At(ProbeKind.Dc), 0, Meter), 9);

    /// <summary>By hand: 1 % of 5 V is 50 mV, one count of the 6 V range is 1 mV.</summary>
    [Fact]
    public void Alternating_volts_have_their_own_error() =>
        Assert.Equal(Math.Sqrt((0.05 * 0.05) + (0.001 * 0.001)), MeterError.Sigma(At(ProbeKind.Ac), 5, Meter), 9);

    private static Probe At(ProbeKind kind) => new("A", "A", "GND", kind);
}
