using System.Text.Json;
using Json.Schema;
using Slowglow.Tests.House;
using Xunit;

namespace Slowglow.Tests.Cli;

/// <summary>Commands about the supply: published shapes, cautions on every printout, sentences for what cannot be.</summary>
public class SupplyAnswersTests
{
    private const string Combo = "demo/kittiwake-15/sheet.yaml";
    private const string Mixer = "demo/saltmarsh-lm2/sheet.yaml";

    [Theory]
    [InlineData("powerup", Mixer, "--lamp", "60W")]
    [InlineData("discharge", Combo)]
    [InlineData("discharge", Combo, "--fault", "R1 open")]
    [InlineData("stress", Mixer)]
    [InlineData("replace", Mixer, "R26 with 10k 1%")]
    [InlineData("overload", Mixer, "T1")]
    [InlineData("offers", Combo, "T1", "--offer", "one: 230V; 230V 220mA; 6.3V 3A; price 5", "--offer", "two: 230V; 20V 1A")]
    [InlineData("rewind", Combo, "T1", "--wound", "P = 20 ohm")]
    [InlineData("rewind", Combo, "T1", "--mains", "115,230", "--measured", "core = EI60")]
    public async Task An_answer_has_its_published_shape(string command, params string[] more)
    {
        var run = await RunCommand.InRoot([command, .. more, "--json"]);
        Assert.True(run.Code == 0, run.Error + run.Out);
        var shape = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root, "docs", "schemas", $"{command}.json")));
        var result = shape.Evaluate(
            JsonDocument.Parse(run.Out).RootElement,
            new EvaluationOptions { OutputFormat = OutputFormat.List }
        );
        var wrong = result
            .Details?.Where(d => d.Errors is not null)
            .Select(d => $"{d.InstanceLocation} {string.Join(" ", d.Errors!.Values)}");
        Assert.True(result.IsValid, string.Join("; ", wrong ?? []));
        Assert.Contains("A lamp limiter limits current, not voltage.", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("discharge", Combo)]
    [InlineData("stress", Mixer)]
    [InlineData("replace", Mixer, "R26 with 10k 1%")]
    [InlineData("overload", Mixer, "T1")]
    [InlineData("rewind", Combo, "T1")]
    public async Task Every_printout_ends_with_the_cautions(params string[] words)
    {
        var run = await RunCommand.InRoot(words);
        Assert.True(run.Code == 0, run.Error);
        Assert.Contains("Mains and HT can kill, also minutes after switch-off.", run.Out, StringComparison.Ordinal);
        Assert.Contains("Figures from a model are expectations, not permission.", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("infinite", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("powerup", Combo, "--lamp", "0W", "'0W' is no lamp. Write its watts")]
    [InlineData("powerup", Combo, "--valves", "half", "'half' says nothing of the valves")]
    [InlineData("rewind", Combo, "T1", "--core", "EI1000", "There is no core EI1000")]
    [InlineData("rewind", Combo, "T1", "--mains", "-230", "'-230' is no mains voltage")]
    [InlineData("rewind", Combo, "T1", "--class", "Q", "There is no insulation class Q")]
    public async Task Options_that_cannot_be_are_answered_with_a_sentence(params string[] words)
    {
        var run = await RunCommand.InRoot(words[..^1]);
        Assert.Equal(1, run.Code);
        Assert.Contains(words[^1], run.Error, StringComparison.Ordinal);
    }
}
