using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Xunit;

namespace Slowglow.Tests.Bench.Questions;

public class FaultReaderTests
{
    [Theory]
    [InlineData("R10 open", "R10", "", FailureMode.Open, 0)]
    [InlineData("r10 OPEN", "R10", "", FailureMode.Open, 0)]
    [InlineData("R10 x5", "R10", "", FailureMode.Drifted, 5)]
    [InlineData("R10 x 2.2", "R10", "", FailureMode.Drifted, 2.2)]
    [InlineData("R10 drifted up 5 times", "R10", "", FailureMode.Drifted, 5)]
    [InlineData("R10 drifted down to 30 %", "R10", "", FailureMode.Drifted, 0.3)]
    [InlineData("C6 leaky 470k", "C6", "", FailureMode.Leaky, 470e3)]
    [InlineData("C6 leaky 4k7", "C6", "", FailureMode.Leaky, 4700)]
    [InlineData("C6 leaky 1.5 Mohm", "C6", "", FailureMode.Leaky, 1.5e6)]
    [InlineData("C1 dried out 10 %", "C1", "", FailureMode.DriedOut, 0.1)]
    [InlineData("V1 section 2 low emission 40 %", "V1", "2", FailureMode.LowEmission, 0.4)]
    [InlineData("V1 2 low emission 40%", "V1", "2", FailureMode.LowEmission, 0.4)]
    public void A_fault_is_read_as_said(string said, string part, string where, FailureMode mode, double severity)
    {
        var read = FaultReader.Read(said, Demo.Combo.Circuit);
        Assert.Empty(read.Findings);
        Assert.Equal((part, where, mode), (read.Value!.Part, read.Value.Where, read.Value.Mode));
        Assert.Equal(severity, read.Value.Severity, 9);
    }

    [Theory]
    [InlineData("R99 open", "fault \"R99 open\": no fault of a part called \"R99\" can be computed")]
    [InlineData("R10", "fault \"R10\": this is not a way to fail that the program knows")]
    [InlineData("R10 tired", "fault \"R10 tired\": this is not a way to fail that the program knows")]
    [InlineData("R10 dead", "fault \"R10 dead\": R10 does not fail that way")]
    [InlineData("R10 drifted", "fault \"R10 drifted\": how bad the fault is cannot be read")]
    [InlineData("V1 2 low emission 140 %", "fault \"V1 2 low emission 140 %\": how bad the fault is cannot be read")]
    public void A_fault_that_makes_no_sense_is_told(string said, string text)
    {
        var read = FaultReader.Read(said, Demo.Combo.Circuit);
        Assert.Null(read.Value);
        var finding = Assert.Single(read.Findings);
        Assert.Equal(text, finding.Text);
        Assert.NotEqual("", finding.Remedy);
    }

    /// <summary>Whatever the program says of a fault it also understands.</summary>
    [Fact]
    public void Every_fault_of_the_combo_is_understood_as_the_program_says_it()
    {
        foreach (var fault in Demo.Combo.Circuit.Faults)
        {
            var read = FaultReader.Read(FaultWords.Say(fault), Demo.Combo.Circuit);
            Assert.True(read.Value is not null, $"{FaultWords.Say(fault)}: {read.Findings.FirstOrDefault()?.Text}");
            Assert.Equal((fault.Part, fault.Where, fault.Mode), (read.Value!.Part, read.Value.Where, read.Value.Mode));
            Assert.InRange(read.Value.Severity, fault.Severity * 0.94, fault.Severity * 1.06);
        }
    }
}
