using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Slowglow.Tests.House;
using Xunit;

namespace Slowglow.Tests.Cli;

/// <summary>Real answers hold to the published shapes.</summary>
public class AnswersAsJsonTests
{
    private const string Combo = "demo/kittiwake-15";
    private const string Mixer = "demo/saltmarsh-lm2";
    private const string Monitor = "demo/heronsgate-m60";

    [Theory]
    [InlineData("check", Combo)]
    [InlineData("check", Mixer)]
    [InlineData("check", Monitor)]
    [InlineData("expect", Combo)]
    [InlineData("expect", Mixer)]
    [InlineData("expect", Monitor)]
    [InlineData("expect", Combo, "--setup", "cold", "--setup", "mains=110V limiter=40W valves=out")]
    [InlineData("levels", Combo)]
    [InlineData("levels", Mixer, "--fault", "R1 open")]
    [InlineData("levels", Monitor)]
    public async Task An_answer_has_its_published_shape(string command, string folder, params string[] more)
    {
        var run = await RunCommand.InRoot([command, $"{folder}/sheet.yaml", "--json", .. more]);
        Holds(command, run);
    }

    [Theory]
    [InlineData(Combo)]
    [InlineData(Mixer)]
    [InlineData(Monitor)]
    public async Task A_diagnosis_has_its_published_shape_and_sums_to_one(string folder)
    {
        var run = await RunCommand.InRoot("diagnose", $"{folder}/sheet.yaml", $"{folder}/readings.yaml", "--json");
        var answer = Holds("diagnose", run);
        var suspects = answer["suspects"]!.AsArray().Select(s => s!["probability"]!.GetValue<double>()).ToArray();
        Assert.NotEmpty(suspects);
        Assert.Equal(suspects.OrderDescending(), suspects);
        var sum = suspects.Sum() + answer["healthy"]!.GetValue<double>() + answer["noneOfThese"]!.GetValue<double>();
        Assert.Equal(1, sum, 6);
    }

    [Fact]
    public async Task A_wrong_sheet_answers_with_its_findings_alone()
    {
        var run = await RunCommand.WithInput("sheet: 1\nunit: X\nparts:\n  R1: 4k7 A -> \n", "expect", "-", "--json");
        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Error);
        var findings = Valid("findings", run.Out)["findings"]!.AsArray();
        Assert.Contains(findings, f => f!["severity"]!.GetValue<string>() == "error" && f["line"]?.GetValue<int>() == 4);
    }

    [Fact]
    public async Task A_wrong_sheet_still_gets_a_whole_check()
    {
        var run = await RunCommand.WithInput("sheet: 1\nparts: nonsense\n", "check", "-", "--json");
        Assert.Equal(2, run.Code);
        Assert.NotEmpty(Valid("check", run.Out)["findings"]!.AsArray());
    }

    [Fact]
    public async Task A_wrong_reading_is_quoted_in_its_finding()
    {
        var run = await RunCommand.InRoot("diagnose", $"{Combo}/sheet.yaml", "--reading", "V9.6 = 62 V", "--json");
        Assert.Equal(2, run.Code);
        var finding = Valid("findings", run.Out)["findings"]!
            .AsArray()
            .Single(f => f!["severity"]!.GetValue<string>() == "error");
        Assert.StartsWith("reading \"V9.6 = 62 V\": ", finding!["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("command line", finding["document"]!.GetValue<string>());
    }

    [Fact]
    public async Task A_setup_without_a_name_is_told_by_its_keys()
    {
        var run = await RunCommand.InRoot(
            "expect",
            $"{Combo}/sheet.yaml",
            "--json",
            "--setup",
            "mains=110V limiter=40W valves=out"
        );
        var setup = Holds("expect", run).AsArray()[0]!["setup"]!.AsObject();
        Assert.Equal(110, setup["mains"]!.GetValue<double>());
        Assert.Equal(40, setup["limiter"]!.GetValue<double>());
        Assert.Equal("out", setup["valves"]!.GetValue<string>());
    }

    [Fact]
    public async Task A_rehearsal_has_its_published_shape()
    {
        var run = await RunCommand.InRoot("rehearse", "demo/sheets/wheatear-p40.yaml", "--cases", "2", "--wrong", "1", "--json");
        var answer = Holds("rehearse", run);
        Assert.Equal(2, answer["singles"]!["cases"]!.GetValue<int>());
        Assert.Equal(3, answer["cases"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("--by", "magic")]
    [InlineData("--draw", "3")]
    [InlineData("--cases", "0")]
    public async Task A_rehearsal_with_a_wrong_option_says_what_would_be_right(string option, string value)
    {
        var run = await RunCommand.InRoot("rehearse", "demo/sheets/wheatear-p40.yaml", option, value);
        Assert.Equal(1, run.Code);
        Assert.Contains("it would be", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_drawing_has_its_published_shape()
    {
        var answer = Holds(
            "draw",
            await RunCommand.InRoot("draw", "demo/kittiwake-15/sheet.yaml", "--resistors", "zigzag", "--json")
        );
        Assert.StartsWith("<svg", answer["svg"]!.GetValue<string>(), StringComparison.Ordinal);
        var wrong = await RunCommand.InRoot("draw", "demo/kittiwake-15/sheet.yaml", "--resistors", "round");
        Assert.Equal(1, wrong.Code);
        Assert.Contains("box or zigzag", wrong.Error, StringComparison.Ordinal);
    }

    private static JsonNode Holds(string schema, CommandRun run)
    {
        Assert.True(run.Code == 0, $"exit {run.Code}\n{run.Error}\n{run.Out}");
        return Valid(schema, run.Out);
    }

    private static JsonNode Valid(string schema, string answer)
    {
        var shape = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root, "docs", "schemas", $"{schema}.json")));
        var result = shape.Evaluate(
            JsonDocument.Parse(answer).RootElement,
            new EvaluationOptions { OutputFormat = OutputFormat.List }
        );
        var wrong = result
            .Details?.Where(d => d.Errors is not null)
            .Select(d => $"{d.InstanceLocation} {string.Join(" ", d.Errors!.Values)}");
        Assert.True(result.IsValid, $"{schema}: {string.Join("; ", wrong ?? [])}\n{answer[..Math.Min(answer.Length, 2000)]}");
        return JsonNode.Parse(answer)!;
    }
}
