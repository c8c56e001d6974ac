using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Diagnosis.Priors;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>What past jobs and age make of the priors: the mean of a Dirichlet distribution, worked by hand.</summary>
public sealed class HistoryTests
{
    private static readonly Fault[] Faults =
    [
        new("R1", "", FailureMode.Open),
        new("R1", "", FailureMode.Drifted, 3),
        new("R2", "", FailureMode.Open),
        new("C1", "", FailureMode.Short),
    ];

    private static readonly double[] Masses = [0.1, 0.3, 0.4, 0.2];

    /// <summary>R1 has 0.4 of the table: (20 x 0.4 + 2) / (20 + 5) = 0.4 after 2 finds of 5 jobs, C1 (20 x 0.2 + 3) / 25 = 0.28.</summary>
    [Fact]
    public void Finds_are_shrunk_towards_the_table()
    {
        var shift = Shift(new("R1", null, 2), new("C1", FailureMode.Short, 3));
        Assert.Equal(0.4, shift.PartShare("R1"), 9);
        Assert.Equal(0.28, shift.PartShare("C1"), 9);
        Assert.Equal(0.32, shift.PartShare("R2"), 9);
    }

    /// <summary>Weights times masses sum to one again, whatever was found.</summary>
    [Fact]
    public void What_one_part_gains_the_others_lose()
    {
        var shift = Shift(new("R1", FailureMode.Drifted, 7), new("R9", null, 4));
        Assert.Equal(1, Faults.Zip(Masses, (f, m) => m * shift.Of(f)).Sum(), 9);
    }

    /// <summary>R1 drifts in 3 of 4 by the table; after one find open it is (4 x 0.75) / 5 = 0.6 and open (4 x 0.25 + 1) / 5 = 0.4.</summary>
    [Fact]
    public void A_part_is_expected_to_fail_as_it_failed_before()
    {
        var shift = Shift(new FoundBefore("R1", FailureMode.Open, 1));
        var (open, drifted) = (Masses[0] * shift.Of(Faults[0]), Masses[1] * shift.Of(Faults[1]));
        Assert.Equal(0.4, open / (open + drifted), 9);
        Assert.Equal(((20 * 0.4) + 1) / 21, open + drifted, 9);
    }

    [Fact]
    public void The_suspect_says_where_it_was_found_before_and_history_can_be_left_out()
    {
        var diagnostician = new Diagnostician(new TwoDividers());
        var past = new PastJobs([new("R2", FailureMode.Drifted, 3), new("R7", null, 2)]);
        var without = Diagnose(diagnostician, null);
        var with = Diagnose(diagnostician, past);
        var again = Diagnose(diagnostician, null);
        double Of(DiagnosisResult r, string part) => r.Suspects.Single(s => s.Group.Contains(part)).Probability;

        Assert.True(Of(with, "R2") > 1.5 * Of(without, "R2"), with.Summary);
        Assert.Equal("found in 3 of 5 past jobs on this sheet", with.Suspects.Single(s => s.Part == "R2").History);
        Assert.All(without.Suspects, s => Assert.Equal("", s.History));
        Assert.Equal(Of(without, "R2"), Of(again, "R2"), 9);
    }

    /// <summary>Thirty years among transistors at 45 degrees are 21 at 50; sixty among them count 1.41 times the usual thirty.</summary>
    [Fact]
    public void An_old_electrolytic_is_suspected_more_than_a_young_one()
    {
        var ageing = new Ageing(new TwoDividers().Sheet);
        double Of(double years) => ageing.Of(PartKind.ElectrolyticCapacitor, FailureMode.DriedOut, years);
        Assert.Equal(60 / 30.0 / Math.Sqrt(2), Of(60), 6);
        Assert.Equal(0.35, Of(2));
        Assert.Equal(1, Of(double.NaN));
        Assert.Equal(1, ageing.Of(PartKind.FilmResistor, FailureMode.Open, 60));
    }

    private static HistoryShift Shift(params FoundBefore[] found) => new(new PastJobs(found), Faults, Masses);

    private static DiagnosisResult Diagnose(Diagnostician diagnostician, PastJobs? past) =>
        diagnostician.Diagnose(
            new Evidence(
                null,
                [Setup.Default, Setup.Cold],
                [new(TwoDividers.Dc("A"), Setup.Default, MeterSaid.Value, 30, MeterClass.Handheld, "", Place.None)]
            )
            {
                Past = past,
            },
            cancel: TestContext.Current.CancellationToken
        );
}
