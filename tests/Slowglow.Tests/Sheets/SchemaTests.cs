using System.Text.Json;
using Json.Schema;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Sheets;

/// <summary>The schemas for editors accept what the reader accepts, and mark what it would refuse.</summary>
public class SchemaTests
{
    private static readonly JsonSchema Sheets = Schema("sheet");
    private static readonly JsonSchema Readings = Schema("readings");

    private static JsonSchema Schema(string name) =>
        JsonSchema.FromFile(Path.Combine(Repository.Root, $"schemas/{name}.schema.json"));

    [Fact]
    public void ThePagesAreValid()
    {
        AssertValid(Sheets, SheetFiles.Text("page.sheet.yaml"));
        AssertValid(Sheets, SheetFiles.Text("every-kind.sheet.yaml"));
        AssertValid(Readings, SheetFiles.Text("page.readings.yaml"));
    }

    public static TheoryData<string> DemoFiles() => [.. Repository.Files("demo", ".yaml").Select(Repository.Relative)];

    [Theory]
    [MemberData(nameof(DemoFiles))]
    public void TheDemoIsValid(string file)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, file));
        var node = YamlAsJson.Read(text)!.AsObject();
        if (node.ContainsKey("sheet"))
        {
            AssertValid(Sheets, text);
        }
        else if (node.ContainsKey("readings"))
        {
            AssertValid(Readings, text);
        }
    }

    [Theory]
    [InlineData("unit: X\nparts: { R1: 10k A -> B }")]
    [InlineData("sheet: 1\nunit: X")]
    [InlineData("sheet: 2\nunit: X\nparts: { R1: 10k A -> B }")]
    [InlineData("sheet: 1\nunit: X\nparts: { R1: { } }")]
    [InlineData("sheet: 1\nunit: X\nparts: { R.1: 10k A -> B }")]
    [InlineData("sheet: 1\nunit: X\nparts: { R1: 10k A -> B }\nmains: { volt: 230 V }")]
    [InlineData("sheet: 1\nunit: X\nparts: { R1: 10k A -> B }\nswitches: { S: [one] }")]
    [InlineData("sheet: 1\nunit: X\nparts: { R1: 10k A -> B }\ncontrols: { VOLUME: 7 }")]
    [InlineData("sheet: 1\nunit: X\nparts: { R1: 10k A -> B }\nsignal: { in: A }")]
    [InlineData("sheet: 1\nunit: X\nparts: { T1: { is: transformer, windings: { P: { volts: 230 V } } } }")]
    [InlineData("sheet: 1\nunit: X\nparts: { R1: 10k A -> B }\ndevices: { X: { law: { is: 1 } } }")]
    public void WrongSheetsAreMarked(string text) => Assert.False(Evaluate(Sheets, text).IsValid);

    [Theory]
    [InlineData("readings: [V1.6 62 V]")]
    [InlineData("readings: { V1.6: 62 V }")]
    [InlineData("readings: [= 62 V]")]
    [InlineData("setups: { cold: { power: maybe } }")]
    [InlineData("setups: { cold: 230 V }")]
    [InlineData("setups: { cold: { pulled: [[V1]] } }")]
    public void WrongReadingsAreMarked(string text) => Assert.False(Evaluate(Readings, text).IsValid);

    private static void AssertValid(JsonSchema schema, string text)
    {
        var result = Evaluate(schema, text);
        var errors = result
            .Details!.Where(d => d.Errors is { Count: > 0 })
            .Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}");
        Assert.True(result.IsValid, string.Join("\n", errors));
    }

    private static EvaluationResults Evaluate(JsonSchema schema, string text)
    {
        var instance = JsonSerializer.SerializeToElement(YamlAsJson.Read(text));
        return schema.Evaluate(instance, new EvaluationOptions { OutputFormat = OutputFormat.List });
    }
}
