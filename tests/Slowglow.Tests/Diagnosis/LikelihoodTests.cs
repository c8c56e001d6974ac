using Slowglow.Circuits;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Next;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

public sealed class LikelihoodTests
{
    private static readonly Probe Ohms = new("R1", "A", "B", ProbeKind.Ohm);
    private static readonly Probe Volts = new("A", "A", NetTable.Ground, ProbeKind.Dc);

    /// <summary>Percentage points of Student's t for five degrees of freedom, as any printed table has them (from memory).</summary>
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1.476, 0.9)]
    [InlineData(2.015, 0.95)]
    [InlineData(2.571, 0.975)]
    [InlineData(4.032, 0.995)]
    [InlineData(-2.015, 0.05)]
    public void Students_t_agrees_with_the_table(double t, double probability) =>
        Assert.Equal(probability, StudentT.Cumulative(t), 3);

    [Fact]
    public void Distribution_by_steps_is_that_of_the_formula()
    {
        for (var z = -14.0; z <= 14; z += 0.0137)
        {
            var whole =
                z < -12 ? 0
                : z > 12 ? 1
                : StudentT.Cumulative(z);
            Assert.Equal(whole, StudentT.CumulativeNearly(z), 1e-5);
        }
    }

    [Fact]
    public void Students_density_is_the_slope_of_its_distribution()
    {
        for (var z = -6.0; z <= 6; z += 0.75)
        {
            var slope = (StudentT.Cumulative(z + 1e-5) - StudentT.Cumulative(z - 1e-5)) / 2e-5;
            Assert.Equal(slope, Math.Exp(StudentT.LogDensity(z, 1)), 6);
        }
    }

    [Theory]
    [InlineData(5.0, 0.001)]
    [InlineData(62, 0.1)]
    [InlineData(250, 0.1)]
    [InlineData(4700, 1)]
    public void Resolution_is_that_of_a_6000_count_meter(double value, double digit) =>
        Assert.Equal(digit, ErrorModel.Resolution(value, MeterClass.Handheld), 9);

    [Theory]
    [InlineData(ProbeKind.Ohm, 47e3)]
    [InlineData(ProbeKind.Ac, 0.7)]
    [InlineData(ProbeKind.Dc, -12)]
    public void Scales_lead_there_and_back(ProbeKind kind, double value)
    {
        var scale = Scale.Of(Volts with { Kind = kind });

        Assert.Equal(value, scale.From(scale.To(value)), 9);
    }

    /// <summary>A stage that passes none: what wiring couples across is of the order of the prediction itself. A stage that passes some is judged as ever.</summary>
    [Theory]
    [InlineData(1.7e-3, 0.9e-3, true)]
    [InlineData(1.7e-3, 20e-3, false)]
    [InlineData(200e-3, 100e-3, false)]
    public void Millivolts_past_a_dead_stage_decide_little(double predicted, double read, bool isNear)
    {
        var probe = Volts with { Kind = ProbeKind.Level };
        var variance = ErrorModel.Variance(probe, MeterClass.Handheld, predicted) + Residue.Variance(probe, predicted, 2);

        var away = Math.Abs(Scale.Of(probe).To(read) - Scale.Of(probe).To(predicted)) / Math.Sqrt(variance);

        Assert.Equal(isNear, away < 1);
    }

    [Fact]
    public void The_broad_prediction_is_a_distribution()
    {
        var broad = new Broad(Volts, new(AnswerKind.Value, 50, 1), 100);
        double sum = 0;
        for (var y = -400.0; y < 400; y += 0.01)
        {
            sum += 0.01 * Math.Exp(broad.LogDensity(y));
        }

        Assert.InRange(sum, 0.97, 1.03);
        Assert.Equal(1, broad.Below(1e6), 3);
    }

    [Fact]
    public void A_reading_that_splits_two_even_cures_is_worth_one_bit()
    {
        var bits = Bits(new(AnswerKind.Value, 10, 0.1), new(AnswerKind.Value, 20, 0.1), Volts);

        Assert.InRange(bits, 0.97, 1.0);
    }

    [Fact]
    public void A_reading_that_both_cures_foresee_alike_is_worth_nothing()
    {
        Assert.Equal(0, Bits(new(AnswerKind.Value, 10, 0.1), new(AnswerKind.Value, 10, 0.1), Volts), 6);
    }

    [Fact]
    public void Overload_against_a_figure_is_worth_nearly_a_bit()
    {
        Assert.InRange(Bits(new(AnswerKind.Overload, 0, 0), new(AnswerKind.Value, 10, 0.1), Ohms), 0.75, 1.0);
    }

    private static double Bits(Prediction a, Prediction b, Probe probe)
    {
        var broad = new Broad(Volts, new(AnswerKind.Value, 50, 1), 100);
        return Predictive.Of([a, b], [new(1, 0, 0.5), new(2, 1, 0.5)], 3, broad, 0, probe, Predictive.MostEdges).Bits();
    }
}
