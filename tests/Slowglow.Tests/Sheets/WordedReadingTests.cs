using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Sheets;

/// <summary>Readings that are no plain figure: bounds, unsteady points, tracer's notes, looks, mistakes.</summary>
public class WordedReadingTests
{
    private static readonly Sheet Sheet = SheetReader.Read(SheetFiles.Text("page.sheet.yaml"), SmallLibrary.Library).Value!;
    private static readonly Setup[] Setups = [Setup.Default, Setup.Cold];

    [Theory]
    [InlineData("HT1 > 600 V", MeterSaid.Above, 600, "dc")]
    [InlineData("HT1 = >600 V", MeterSaid.Above, 600, "dc")]
    [InlineData("HT1 >= 600 V", MeterSaid.Above, 600, "dc")]
    [InlineData("OUT < 1 mV ac", MeterSaid.Below, 1e-3, "ac")]
    [InlineData("R5 > 20M on cold", MeterSaid.Above, 20e6, "ohm")]
    [InlineData("HT1-HT2 < 1 V", MeterSaid.Below, 1, "dc")]
    [InlineData("V1.6 = unstable", MeterSaid.Unstable, double.NaN, "dc")]
    [InlineData("V1.6 = 62 V unstable", MeterSaid.Unstable, 62, "dc")]
    [InlineData("R5 = wandering on cold", MeterSaid.Unstable, double.NaN, "ohm")]
    public void Bounds_and_unsteady_points(string line, MeterSaid said, double value, string kind)
    {
        var read = ReadingsReader.ReadLine(line, Sheet, Setups);
        Assert.Empty(read.Findings.Select(f => f.Text));
        Assert.Equal((said, kind), (read.Value!.Said, read.Value.Probe.KindText));
        Assert.Equal(value, read.Value.Value, 12);
        Assert.Equal(line, read.Value.Text);
    }

    [Fact]
    public void A_tracers_note_is_a_reading_for_each_place()
    {
        var read = ReadingsReader.ReadLine("signal at V1.6, none at TOP", Sheet, Setups);
        Assert.Empty(read.Findings);
        var each = read.Value!.Each().ToList();
        Assert.Equal([("V1.6", MeterSaid.Signal), ("TOP", MeterSaid.NoSignal)], each.Select(r => (r.Probe.Where, r.Said)));
        Assert.All(each, r => Assert.Equal("1kHz", r.Probe.KindText));
        Assert.Equal("no signal", each[1].Shown);
    }

    [Theory]
    [InlineData("weak signal at OUT", "OUT", MeterSaid.WeakSignal)]
    [InlineData("no signal at OUT on bench", "OUT", MeterSaid.NoSignal)]
    public void Tracers_words(string line, string where, MeterSaid said)
    {
        var reading = ReadingsReader.ReadLine(line, Sheet, Setups).Value!;
        Assert.Equal((where, said), (reading.Probe.Where, reading.Said));
    }

    [Theory]
    [InlineData("R5 burnt", "R5", Look.Burnt)]
    [InlineData("burnt R5", "R5", Look.Burnt)]
    [InlineData("R5 looks scorched", "R5", Look.Burnt)]
    [InlineData("hot T1", "T1", Look.Hot)]
    [InlineData("V1 heater dark", "V1", Look.Dark)]
    [InlineData("glowing heater of V1", "V1", Look.Lit)]
    [InlineData("C1 is bulged", "C1", Look.Bulged)]
    [InlineData("red anode on V1", "V1", Look.AnodeRed)]
    [InlineData("dry joint at R2", "R2", Look.Loose)]
    public void Looks(string line, string part, Look look)
    {
        var read = ReadingsReader.ReadLine(line, Sheet, Setups);
        Assert.Empty(read.Findings.Select(f => f.Text));
        Assert.Equal((part, look, MeterSaid.Look), (read.Value!.Probe.Where, read.Value.Look, read.Value.Said));
    }

    [Fact]
    public void One_line_may_name_several_parts() =>
        Assert.Equal(
            ["C1", "C2"],
            ReadingsReader.ReadLine("C1 and C2 bulged", Sheet, Setups).Value!.Each().Select(r => r.Probe.Where)
        );

    [Theory]
    [InlineData("R5 heater dark", "nothing that glows")]
    [InlineData("R5 bulged", "no capacitor")]
    [InlineData("R5 wobbly", "not something to be seen")]
    [InlineData("signal at NOWHERE", "'NOWHERE' is neither a net nor a part")]
    [InlineData("no signal at OUT on cold", "no signal to trace")]
    public void What_cannot_be_said_of_a_part_is_met_by_a_sentence(string line, string text)
    {
        var read = ReadingsReader.ReadLine(line, Sheet, Setups);
        Assert.Null(read.Value);
        Assert.Contains(text, Assert.Single(read.Findings).Text);
    }

    [Theory]
    [InlineData("V1.6 = 62 V mistake")]
    [InlineData("V1.6 = 62 V (mistake)")]
    [InlineData("mistake: V1.6 = 62 V")]
    public void A_mistake_keeps_its_line(string line)
    {
        var read = ReadingsReader.ReadLine(line, Sheet, Setups);
        Assert.Empty(read.Findings.Select(f => f.Text));
        Assert.True(read.Value is { IsMistake: true, Value: 62 });
        Assert.Equal(line, read.Value!.Text);
    }

    [Fact]
    public void A_document_holds_all_of_them()
    {
        var read = ReadingsReader.Read(
            "readings:\n- HT1 = 280 V\n- R5 burnt\n- signal at V1.6, none at TOP\n- mistake: V1.6 = 62 V\n- OUT < 1 mV ac\n",
            Sheet
        );
        Assert.Empty(read.Findings.Select(f => f.Text));
        Assert.Equal(
            [MeterSaid.Value, MeterSaid.Look, MeterSaid.Signal, MeterSaid.NoSignal, MeterSaid.Value, MeterSaid.Below],
            read.Value!.Readings.Select(r => r.Said)
        );
        Assert.True(read.Value.Readings[4].IsMistake);
    }
}
