using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Readings;

namespace Slowglow.Tests.Sheets;

/// <summary>The sheet and the readings of the format page, whole.</summary>
public class PageTests
{
    private static readonly Parsed<Sheet> Page = SheetReader.Read(SheetFiles.Text("page.sheet.yaml"), SmallLibrary.Library);

    private static Sheet Sheet => Page.Value!;

    [Fact]
    public void TheSheetHasNoErrors()
    {
        Assert.Empty(Page.Findings.Where(f => f.Severity != Severity.Note).Select(f => $"{f.Place}: {f.Text}"));
        Assert.Equal("Tern 2 line driver", Sheet.Unit);
        Assert.Equal("Harrow & Pike", Sheet.Maker);
        Assert.Equal(new Mains(230, 50, 0.06), Sheet.Mains);
        Assert.Equal(19, Sheet.Parts.Count);
    }

    [Fact]
    public void OnlyTheValuesOutsideTheSeriesDrawANote()
    {
        var note = Assert.Single(Page.Findings);
        Assert.Equal("C3", note.Subject);
        Assert.Equal("C3: 25u is in no preferred series (IEC 60063)", note.Text);
        Assert.Equal(new Place(34, 9), note.Place);
    }

    [Fact]
    public void SwitchesControlsAndSignal()
    {
        Assert.Equal(["flat", "bright"], Assert.Single(Sheet.Switches).Positions);
        Assert.Equal(0.5, Assert.Single(Sheet.Controls).Rotation);
        Assert.Equal(new SignalPath("signal", "IN", "OUT", 10e3, 0.1, 1e6), Assert.Single(Sheet.Signals));
        Assert.Equal(
            [new PointRemark("HT1", 1, "red lead on C1"), new PointRemark("T1.3", 90, "board must come out")],
            Sheet.Points
        );
    }

    [Fact]
    public void PartsHaveTheirFigures()
    {
        Assert.Equal(0.5, Find<FusePart>("F1").RatedAmps);
        Assert.Equal((10e3, 2.0), (Find<ResistorPart>("R1").Ohms, Find<ResistorPart>("R1").RatedWatts));
        Assert.Equal(1500, Find<ResistorPart>("R4").Ohms);
        Assert.Equal(
            (22e-9, 400.0, CapacitorStyle.Film),
            (Find<CapacitorPart>("C4").Farads, Find<CapacitorPart>("C4").RatedVolts, Find<CapacitorPart>("C4").Style)
        );
        Assert.Equal(
            (1e6, Taper.Log, "VOLUME", 0.5),
            (
                Find<PotPart>("VR1").Ohms,
                Find<PotPart>("VR1").Taper,
                Find<PotPart>("VR1").ControlName,
                Find<PotPart>("VR1").Rotation
            )
        );
        Assert.Equal(("VOICE", "bright"), (Find<ContactPart>("S1a").SwitchName, Find<ContactPart>("S1a").Position));
    }

    [Fact]
    public void WindingsAreSplitAndRaised()
    {
        var transformer = Find<TransformerPart>("T1");
        Assert.Equal(20, transformer.Rating);
        Assert.Equal(["1", "2", "3", "4", "5", "6", "7"], transformer.Pins.Select(p => p.Number));
        var (primary, high, low) = (transformer.Windings[0], transformer.Windings[1], transformer.Windings[2]);
        Assert.True(primary is { IsPrimary: true, SectionVolts: [230], SectionOhms: [95] });
        Assert.Equal([310.0], high.SectionOhms);

        // 230 V primary carries (200 V 25 mA + 24 V 300 mA) / 230 V = 53.0 mA through 95 ohm: 2.19 % of its volts.
        var drop = 12.2 / 230 * 95 / 230;
        Assert.Equal((200 + (0.025 * 310)) / (1 - drop), high.SectionVolts[0], 6);
        Assert.Equal(2, low.SectionVolts.Count);
        Assert.Equal(low.SectionVolts[0], low.SectionVolts[1], 9);
        Assert.InRange(low.SectionVolts[0], 12.3, 14);
        Assert.Contains(Sheet.Assumptions, a => a is { Subject: "T1", What: "resistance of winding LT" });
    }

    [Fact]
    public void NetsHaveTheirNames()
    {
        Assert.Equal("V1.7", Sheet.Nets.Find("V1.g2"));
        Assert.Equal("V1.1", Sheet.Nets.Find("V1.a"));
        Assert.Equal("V1.1", Sheet.Nets.Find("V1.a1"));
        Assert.Equal("V1.6", Sheet.Nets.Find("V1.a2"));
        Assert.Equal("V1.6", Sheet.Nets.Find("R5.2"));
        Assert.Equal("HT2", Sheet.Nets.Find("R1.2"));
        Assert.Equal("MAINS.N", Sheet.Nets.Find("W1.1"));
        Assert.Equal("T1.2", Sheet.Nets.Find("W1.2"));
        Assert.Null(Sheet.Nets.Find("nowhere"));
    }

    [Fact]
    public void TheReadingsHaveNoErrors()
    {
        var read = ReadingsReader.Read(SheetFiles.Text("page.readings.yaml"), Sheet);
        Assert.Empty(read.Findings.Select(f => $"{f.Place}: {f.Text}"));
        var document = read.Value!;
        Assert.Equal("hums with the volume down and sounds thin", document.Complaint);
        Assert.Equal(["bench", "slow", "cold"], document.Setups.Select(s => s.Name));
        Assert.True(document.Setups[1] is { MainsVolts: 110, LimiterWatts: 40, ValvesOut: true });
        Assert.True(document.Setups[2].PowerOff);
        Assert.Equal(
            [
                "V1.6 dc 62 V bench",
                "HT1 dc 128 V slow",
                "T1.3 - T1.4 ac 203 V bench",
                "HT1 ripple 6 V bench",
                "T1.3 - T1.4 ohm 312 ohm cold",
                "D1 diode NaN V cold",
                "MAINS ac 0.085 A bench",
                "OUT 1kHz 0.12 V bench",
            ],
            document.Readings.Select(r =>
                FormattableString.Invariant($"{r.Probe.Where} {r.Probe.KindText} {r.Value} {r.Probe.Unit} {r.Setup.Name}")
            )
        );
        Assert.Equal(MeterSaid.Overload, document.Readings[5].Said);
        Assert.Equal(("GND", "HT1"), (Sheet.Nets.Find("T1.99") ?? "GND", document.Readings[5].Probe.Black));
        Assert.Equal(new Place(7, 5), document.Readings[0].Place);
    }

    private static T Find<T>(string designator) =>
        Assert.IsType<T>(Sheet.Parts.Single(p => p.Designator == designator), exactMatch: false);
}
