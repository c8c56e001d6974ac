using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Sheets;

/// <summary>Single reading lines, probes, and setups with every key.</summary>
public class ReadingLineTests
{
    private static readonly Sheet Sheet = SheetReader.Read(SheetFiles.Text("page.sheet.yaml"), SmallLibrary.Library).Value!;
    private static readonly Sheet Every = SheetReader.Read(SheetFiles.Text("every-kind.sheet.yaml"), SmallLibrary.Library).Value!;
    private static readonly Setup[] Setups = [Setup.Default, Setup.Cold];

    [Theory]
    [InlineData("V1.6 = 62 V", "V1.6", "dc", 62, "V1.6", "GND")]
    [InlineData("V1.6=62", "V1.6", "dc", 62, "V1.6", "GND")]
    [InlineData("V1.a2 = 62 V dc", "V1.a2", "dc", 62, "V1.6", "GND")]
    [InlineData("V1.plate2 = 62 V", "V1.plate2", "dc", 62, "V1.6", "GND")]
    [InlineData("V1.6 = -1.2 V", "V1.6", "dc", -1.2, "V1.6", "GND")]
    [InlineData("V1.6 = - 1.2 V", "V1.6", "dc", -1.2, "V1.6", "GND")]
    [InlineData("HT1 = 6 V ripple", "HT1", "ripple", 6, "HT1", "GND")]
    [InlineData("HT1 = 600mV ac", "HT1", "ac", 0.6, "HT1", "GND")]
    [InlineData("T1.3 - T1.4 = 203 VAC", "T1.3 - T1.4", "ac", 203, "T1.3", "T1.4")]
    [InlineData("T1.HT = 203 V ac", "T1.HT", "ac", 203, "T1.3", "T1.4")]
    [InlineData("HT1-HT2 = 12 V", "HT1 - HT2", "dc", 12, "HT1", "HT2")]
    [InlineData("R1 = 12 V", "R1", "dc", 12, "HT1", "HT2")]
    [InlineData("R5 = 99.8k on cold", "R5", "ohm", 99800, "HT2", "V1.6")]
    [InlineData("R5 = 100k ohm on cold", "R5", "ohm", 100e3, "HT2", "V1.6")]
    [InlineData("R5 = 100 kΩ on cold", "R5", "ohm", 100e3, "HT2", "V1.6")]
    [InlineData("D1 = 0.55 V diode on cold", "D1", "diode", 0.55, "T1.3", "HT1")]
    [InlineData("MAINS = 85 mA", "MAINS", "ac", 0.085, "MAINS", "GND")]
    [InlineData("OUT = 120 mV ac 1kHz", "OUT", "1kHz", 0.12, "OUT", "GND")]
    [InlineData("OUT = 120 mV 82.5 Hz", "OUT", "82.5Hz", 0.12, "OUT", "GND")]
    [InlineData("OUT 1kHz = 120 mV", "OUT", "1kHz", 0.12, "OUT", "GND")]
    public void Lines(string line, string where, string kind, double value, string red, string black)
    {
        var read = ReadingsReader.ReadLine(line, Sheet, Setups);
        Assert.Empty(read.Findings.Select(f => f.Text));
        var reading = read.Value!;
        Assert.Equal(
            (where, kind, red, black),
            (reading.Probe.Where, reading.Probe.KindText, reading.Probe.Red, reading.Probe.Black)
        );
        Assert.Equal(value, reading.Value, Math.Abs(value) * 1e-12);
        Assert.Equal(line.Contains("cold", StringComparison.Ordinal) ? "cold" : "bench", reading.Setup.Name);
        Assert.Equal(line, reading.Text);
    }

    [Theory]
    [InlineData("D1 = OL diode on cold", ProbeKind.Diode)]
    [InlineData("R5 = OL on cold", ProbeKind.Ohm)]
    [InlineData("R5 = o.l. ohm on cold", ProbeKind.Ohm)]
    public void Overload(string line, ProbeKind kind)
    {
        var reading = ReadingsReader.ReadLine(line, Sheet, Setups).Value!;
        Assert.Equal((MeterSaid.Overload, kind), (reading.Said, reading.Probe.Kind));
        Assert.True(double.IsNaN(reading.Value));
    }

    [Theory]
    [InlineData("HT1 = 280 V", "handheld")]
    [InlineData("HT1 = 280 V meter bench", "bench")]
    [InlineData("HT1 = 280 V meter analogue on bench", "analogue")]
    public void Meters(string line, string meter) =>
        Assert.Equal(meter, ReadingsReader.ReadLine(line, Sheet, Setups).Value!.Meter.Name);

    [Theory]
    [InlineData("V1.6", "V1.6", "dc")]
    [InlineData("HT1 ripple", "HT1", "ripple")]
    [InlineData("OUT 1 kHz", "OUT", "1kHz")]
    [InlineData("R5 ohm", "R5", "ohm")]
    [InlineData("D1 diode", "D1", "diode")]
    [InlineData("MAINS", "MAINS", "ac")]
    [InlineData("T1.3 - T1.4 ac", "T1.3 - T1.4", "ac")]
    public void Probes(string text, string where, string kind)
    {
        var probe = ReadingsReader.ReadProbe(text, Sheet).Value!;
        Assert.Equal((where, kind), (probe.Where, probe.KindText));
    }

    [Fact]
    public void PlacesInALineCountItsBlanks()
    {
        var finding = Assert.Single(ReadingsReader.ReadLine("   HTI = 62 V", Sheet, Setups).Findings);
        Assert.Equal(new Place(1, 4), finding.Place);
    }

    [Fact]
    public void ASetupWithEveryKey()
    {
        const string text = """
            setups:
              all:
                mains: 110 V
                limiter: 40 W
                valves: in
                pulled: [V1, V2]
                lifted: [R1, R2.2, D1.k]
                load: none
                channel: second
                VOICE: off
                VOLUME: 70 %
                J1: in
              out: { valves: out, load: 8 ohm, limiter: out }
              dead: { mains: off }
            """;
        var read = ReadingsReader.Read(text, Every);
        Assert.Empty(read.Findings.Select(f => $"{f.Place} {f.Text}"));
        var (all, pulled, dead) = (read.Value!.Setups[0], read.Value.Setups[1], read.Value.Setups[2]);
        Assert.True(
            all
                is {
                    MainsVolts: 110,
                    LimiterWatts: 40,
                    ValvesOut: false,
                    PowerOff: false,
                    Channel: "second",
                    LoadOhms: double.PositiveInfinity
                }
        );
        Assert.Equal(["V1", "V2"], all.Pulled);
        Assert.Equal(["R1", "R2.2", "D1.2"], all.Lifted);
        Assert.Equal(("off", "in", 0.7), (all.Switches["VOICE"], all.Switches["J1"], all.Controls["VOLUME"]));
        Assert.True(pulled is { ValvesOut: true, LoadOhms: 8, LimiterWatts: null });
        Assert.True(dead.PowerOff);
    }

    [Fact]
    public void WithoutSetupsTheBenchIsTheDefault() =>
        Assert.Equal([Setup.Default], ReadingsReader.Read("readings: [HT1 = 280 V]", Sheet).Value!.Setups);
}
