using Slowglow.Bench.Writing;

namespace Slowglow.Tests.Bench.Writing;

public sealed class ReadTypedTests
{
    private const string Stage = """
        sheet: 1
        unit: Tern 2
        mains: { volts: 230 V }
        parts:
          V1: 12AX7
          R1: 100k HT -> V1.1
          R2: 1k5 V1.3 -> GND
          R3: 1M IN -> GND
          W1: wire IN -> V1.2
          J1: jack HT
        """;

    [Fact]
    public void Nets_in_use_are_those_with_a_name_of_their_own() =>
        Assert.Equal(["GND", "HT", "IN"], new ReadTyped().Run(Stage).Nets.Order(StringComparer.Ordinal));

    [Fact]
    public void Pins_that_nothing_is_on_yet_are_free()
    {
        var valve = new ReadTyped().Run(Stage).Parts.Single(p => p.Name == "V1");

        Assert.Equal(
            ["6", "7", "8"],
            valve.Pins.Where(p => p.IsFree && p.Electrode.Length > 0 && p.Electrode[0] != 'h').Select(p => p.Number)
        );
    }

    [Theory]
    [InlineData("V1: 12AX7", "V1: 12AZ7", "12AX7")]
    [InlineData("parts:", "partz:", "parts")]
    [InlineData("R1: 100k HT -> V1.1", "R1: 100k carbn HT -> V1.1", "carbon")]
    public void Finding_offers_the_word_that_was_meant(string right, string typed, string offered)
    {
        var text = Stage.Replace(right, typed, StringComparison.Ordinal);
        var line = text.Split('\n').ToList().FindIndex(l => l.Contains(typed, StringComparison.Ordinal)) + 1;

        var found = new ReadTyped().Run(text).Findings.First(f => f.Line == line && f.Instead.Count > 0);

        Assert.Contains(offered, found.Instead);
        var wrong = text.Split('\n')[line - 1][(found.Column - 1)..].Split(' ', ':', '\r')[0];
        Assert.Contains(wrong, typed, StringComparison.Ordinal);
        Assert.DoesNotContain(wrong, right.Split(' ', ':'));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("  R9: 1k HT -> V1.6\n", false)]
    public void Half_of_a_valve_that_is_not_used_is_not_missing_and_one_begun_is(string more, bool isThere)
    {
        var cathode = Stage.Replace("  J1:", more + "  J1:", StringComparison.Ordinal);

        var electrodes = new ReadTyped().Run(cathode).Checklist.Single(c => c.Text == "Every electrode leads somewhere");

        Assert.Equal(isThere, electrodes.IsThere);
        Assert.Equal(!isThere, electrodes.Remedy.Contains("V1.7", StringComparison.Ordinal));
    }

    [Fact]
    public void Valve_that_nothing_is_on_at_all_is_missing_every_electrode()
    {
        var text = Stage.Replace("  J1:", "  V2: 12AX7\n  J1:", StringComparison.Ordinal);

        var electrodes = new ReadTyped().Run(text).Checklist.Single(c => c.Text == "Every electrode leads somewhere");

        Assert.Contains("V2.1", electrodes.Remedy, StringComparison.Ordinal);
    }
}
