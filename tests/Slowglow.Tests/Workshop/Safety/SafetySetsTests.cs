using System.Globalization;
using Slowglow.Tests.House;
using Slowglow.Workshop.Safety;
using Xunit;

namespace Slowglow.Tests.Workshop.Safety;

/// <summary>The limits against tests/reference/safety_limits.csv, where every row names where it was read.</summary>
public sealed class SafetySetsTests
{
    private static readonly Dictionary<string, string[]> Names = new()
    {
        [SafetyTests.Earth] = ["protective conductor resistance", "earth continuity"],
        [SafetyTests.Insulation] = ["insulation resistance"],
        [SafetyTests.EarthCurrent] = ["protective conductor current"],
        [SafetyTests.Touch] = ["touch current"],
        [SafetyTests.Leakage] = ["leakage", "leakage and insulation"],
        [SafetyTests.Chassis] = ["leakage"],
    };

    public static TheoryData<int> Rows() => [.. Enumerable.Range(0, SafetySets.All.Count)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Limit_is_the_published_one(int index)
    {
        var limit = SafetySets.All[index];
        var rows = CsvFile
            .Read(Path.Combine(Repository.Root, "tests", "reference", "safety_limits.csv"))
            .Where(r =>
                r["standard"] == limit.Standard
                && Names[limit.Test].Contains(r["test"])
                && (r["equipment_class"] == limit.Class || r["equipment_class"] == "all")
                && r["confidence"] == limit.Confidence
                && (limit.Value is null ? r["value"].Length == 0 : Same(r, limit))
            );
        Assert.NotEmpty(rows);
    }

    [Fact]
    public void Every_set_tests_both_classes() =>
        Assert.All(SafetySets.Names, set => Assert.All(new[] { "I", "II" }, c => Assert.NotEmpty(SafetySets.Of(set, c))));

    /// <summary>5 m 0.3; 5.1 to 12.5 m 0.4; 20 m 0.5; never above 1 ohm.</summary>
    [Theory]
    [InlineData(2, 0.3)]
    [InlineData(5, 0.3)]
    [InlineData(5.1, 0.4)]
    [InlineData(12.5, 0.4)]
    [InlineData(20, 0.5)]
    [InlineData(200, 1.0)]
    public void Long_lead_may_have_more_ohms(double metres, double ohms)
    {
        var limit = SafetySets.Of("EN 50678, after repair", "I").Single(l => l.Test == SafetyTests.Earth);

        Assert.Equal(ohms, SafetySets.With(limit, metres, 0)!.Value, 9);
    }

    [Fact]
    public void Conductor_of_the_lead_is_added_by_the_code_of_practice()
    {
        var limit = SafetySets.Of("IET, 5th edition, in service", "I").Single(l => l.Test == SafetyTests.Earth);

        Assert.Equal(0.17, SafetySets.With(limit, 3, 0.07)!.Value, 9);
    }

    [Theory]
    [InlineData(0.29, 1.5, true, true)]
    [InlineData(0.31, 1.5, true, false)]
    [InlineData(0.29, 0.9, true, false)]
    [InlineData(0.29, 1.5, false, false)]
    public void Test_passes_when_everything_does(double earth, double insulation, bool lead, bool passed)
    {
        SafetyFigure[] figures =
        [
            new(SafetyTests.Earth, earth, "ohm", false, 0.3, "x"),
            new(SafetyTests.Insulation, insulation, "megohm", true, 1, "x"),
        ];
        var day = new DateOnly(2026, 3, 2);
        var test = new SafetyTest("set", "I", figures, lead, true, "tester 7", day, "Ada", day);

        Assert.Equal(passed, test.Passed);
        Assert.Equal(passed, test.Failures.Count == 0);
        Assert.Empty(test.Look());
        Assert.NotEmpty((test with { CalibratedUntil = day.AddDays(-1) }).Look());
    }

    private static bool Same(IReadOnlyDictionary<string, string> row, SafetyLimit limit)
    {
        if (!double.TryParse(row["value"], CultureInfo.InvariantCulture, out var value))
        {
            return false;
        }

        value /= row["unit"] == "milliohm" ? 1000 : 1;
        return Math.Abs(value - limit.Value!.Value) < 1e-9 && row["limit_kind"] == (limit.IsLeast ? "min" : "max");
    }
}
