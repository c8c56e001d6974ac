using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Xunit;

namespace Slowglow.Tests.Bench.Questions;

public sealed class MarkDrawingTests
{
    [Fact]
    public void A_group_that_nothing_tells_apart_shares_its_suspicion_and_a_pair_does_not()
    {
        var shares = MarkDrawing.Suspicion([
            Suspect("R1", 0.6, ["R1", "C2", "V1"]),
            Suspect("R9", 0.3, ["R9", "C2"]) with
            {
                Second = new Fault("C2", "", FailureMode.Short),
            },
        ]);

        Assert.Equal(0.2, shares["R1"], 12);
        Assert.Equal(0.2, shares["V1"], 12);
        Assert.Equal(0.3, shares["R9"], 12);
        Assert.Equal(0.5, shares["C2"], 12);
    }

    [Theory]
    [InlineData(ProbeKind.Dc, 1.4, "V dc, 2 V range")]
    [InlineData(ProbeKind.Dc, -201, "V dc, 1000 V range")]
    [InlineData(ProbeKind.Dc, double.NaN, "V dc")]
    [InlineData(ProbeKind.Ac, 0.05, "V ac, 200 mV range")]
    [InlineData(ProbeKind.Ohm, 1e5, "ohms, power off")]
    [InlineData(ProbeKind.Diode, 0.6, "diode test, power off")]
    public void Meter_is_set_to_the_lowest_range_that_holds_what_may_be_there(ProbeKind kind, double most, string said) =>
        Assert.Equal(said, MeterRange.Say(new Probe("X", "X", "GND", kind), most));

    private static Suspect Suspect(string part, double probability, string[] group) =>
        new(part, new Fault(part, "", FailureMode.Open), probability, group, [], [], [], "");
}
