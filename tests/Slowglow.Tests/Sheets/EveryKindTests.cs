using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Connector;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Loudspeaker;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Relay;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Unknown;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Tests.Sheets;

/// <summary>Every kind of part in both forms, with the letters and words that lead to it.</summary>
public class EveryKindTests
{
    private static readonly Parsed<Sheet> Read = SheetReader.Read(SheetFiles.Text("every-kind.sheet.yaml"), SmallLibrary.Library);

    private static Sheet Sheet => Read.Value!;

    [Fact]
    public void NothingIsWrong() =>
        Assert.Empty(Read.Findings.Where(f => f.Severity != Severity.Note).Select(f => $"{f.Place}: {f.Text}"));

    [Theory]
    [InlineData(typeof(ResistorPart), "R1 R2 R3 R4 R20")]
    [InlineData(typeof(CapacitorPart), "C1 C2 C3 C24")]
    [InlineData(typeof(InductorPart), "L1 L2")]
    [InlineData(typeof(PotPart), "VR1 VR2 VR3 TR2")]
    [InlineData(typeof(TransistorPart), "TR1 Q1 Q2 Q3 Q4")]
    [InlineData(typeof(DiodePart), "D1 D2 D3 ZD4 D5 D6 LED7 D8 D9 D10 D11")]
    [InlineData(typeof(ValvePart), "V1 V2 V3 V4 V5")]
    [InlineData(typeof(OpAmpPart), "U1")]
    [InlineData(typeof(RegulatorPart), "U2 U3")]
    [InlineData(typeof(TransformerPart), "T1 T2 T3 T4")]
    [InlineData(typeof(FusePart), "F1 F2")]
    [InlineData(typeof(LampPart), "LP1")]
    [InlineData(typeof(ContactPart), "S1 S2")]
    [InlineData(typeof(WirePart), "W1 W2")]
    [InlineData(typeof(LoudspeakerPart), "LS1 LS2")]
    [InlineData(typeof(ConnectorPart), "J1 J2")]
    [InlineData(typeof(UnknownPart), "X1")]
    public void Kinds(Type kind, string designators) =>
        Assert.All(designators.Split(' '), d => Assert.IsType(kind, Find<Part>(d)));

    [Fact]
    public void OneValueHasManySpellings()
    {
        Assert.Equal([4700, 4700, 4700], new[] { "R2", "R3", "R4" }.Select(d => Find<ResistorPart>(d).Ohms));
        Assert.Equal(
            (0.5, 0.1, ResistorStyle.Carbon),
            (Find<ResistorPart>("R2").RatedWatts, Find<ResistorPart>("R2").Tolerance, Find<ResistorPart>("R2").Style)
        );
        Assert.Equal(2.2e-9, Find<CapacitorPart>("C2").Farads, 1e-18);
        Assert.Equal(25e-6, Find<CapacitorPart>("C3").Farads, 1e-15);
        Assert.Equal((8.0, 180.0), (Find<InductorPart>("L1").Henries, Find<InductorPart>("L1").CopperOhms));
        Assert.Equal(new[] { 0.5, 1 }, new[] { "F1", "F2" }.Select(d => Find<FusePart>(d).RatedAmps));
    }

    [Fact]
    public void ADecimalCommaInsideBracesIsOneFigure()
    {
        var read = SheetReader.Read(
            "sheet: 1\nunit: X\nparts:\n  R1: { is: resistor, ohms: 4,7k, between: [A, B] }\n",
            SmallLibrary.Library
        );
        Assert.Empty(read.Findings);
        Assert.Equal(4700, Assert.IsType<ResistorPart>(Assert.Single(read.Value!.Parts)).Ohms);
    }

    [Fact]
    public void FiguresNotOnTheDrawingAreAssumedAndListed()
    {
        Assert.Equal(250, Find<InductorPart>("L2").CopperOhms);
        Assert.Equal(6.4, Find<LoudspeakerPart>("LS1").DcOhms, 1e-12);
        Assert.Equal(8, Find<LoudspeakerPart>("LS2").DcOhms);
        Assert.Equal(0.945, Find<LampPart>("LP1").RatedWatts, 1e-12);
        Assert.Contains(
            new Assumption("L2", "copper resistance", "250 ohm", "from its henries, common practice, no source"),
            Sheet.Assumptions
        );
        Assert.Contains(
            new Assumption("LS1", "dc resistance", "6.4 ohm", "0.8 of nominal, common practice, no source"),
            Sheet.Assumptions
        );
        Assert.DoesNotContain(Sheet.Assumptions, a => a is { Subject: "R1", What: "tolerance" });
        Assert.Contains(Sheet.Assumptions, a => a is { Subject: "R4", What: "tolerance", Figure: "5 %" });
        Assert.Contains(
            Sheet.Assumptions,
            a => a is { Subject: "V1", What: "spread between specimens", Figure: "amplification factor 5 %" }
        );
    }

    [Fact]
    public void DiodesByVoltsColourAndLikeness()
    {
        Assert.Equal([12, 5.1, 33], new[] { "D2", "D3", "ZD4" }.Select(d => Find<DiodePart>(d).Device["bv"]));
        Assert.Equal((1.3, 0.5), (Find<DiodePart>("D3").RatedWatts, Find<DiodePart>("D2").RatedWatts));
        Assert.Equal(["BY127", "BY127"], new[] { "D8", "D9" }.Select(d => Find<DiodePart>(d).Description));
        Assert.All(new[] { "D8", "D9" }, d => Assert.Equal("1N4007", Find<DiodePart>(d).Device.Type));
        Assert.Equal(
            (0.1, 1.8, 1300.0),
            (Find<DiodePart>("D11").Device["rs"], Find<DiodePart>("D11").Device["n"], Find<DiodePart>("D11").RatedVolts)
        );
    }

    [Fact]
    public void PinsByNumberElectrodeAndOtherName()
    {
        Assert.Equal(["c", "b", "e"], Find<TransistorPart>("Q1").Pins.Select(p => p.Electrode));
        Assert.Equal(["d", "g", "s"], Find<TransistorPart>("Q3").Pins.Select(p => p.Electrode));
        Assert.Equal(["in", "adj", "out"], Find<RegulatorPart>("U3").Pins.Select(p => p.Electrode));
        Assert.Equal(("OPT", "HT1"), (Find<ValvePart>("V2").NetOf("a"), Sheet.Nets.Find("V2.s")));
        Assert.Equal("HT1", Sheet.Nets.Find("V2.g2"));
        Assert.Equal(("A", "B"), (Sheet.Nets.Find("V4.a1"), Sheet.Nets.Find("V4.a2")));
        Assert.Equal("U1.in-", Sheet.Nets.Find("U1.2"));
        Assert.Equal("U1.in-", Sheet.Nets.Find("U1.in-1"));
        Assert.Equal("V1.p", Sheet.Nets.Find("V1.a"));
        Assert.Equal("V1.6", Find<ValvePart>("V1").NetOf("6"));
        Assert.Equal(["1", "2"], Find<WirePart>("W1").Pins.Select(p => p.Number));
    }

    [Fact]
    public void OutputTransformersHaveRelativeTurns()
    {
        var byImpedance = Find<TransformerPart>("T2");
        Assert.True(byImpedance is { IsOutput: true, Rating: 8, PrimaryImpedance: 5000 });
        Assert.Equal(2, byImpedance.Windings[0].SectionVolts.Count);
        Assert.Equal(25, Ratio(byImpedance), 1e-9);
        Assert.Equal(250, byImpedance.Windings[0].SectionOhms.Sum(), 1e-9);
        Assert.Equal([0.4], byImpedance.Windings[1].SectionOhms);
        var byRatio = Find<TransformerPart>("T3");
        Assert.Equal(25, Ratio(byRatio), 1e-9);
        Assert.Equal(["A", "B", "C", "GND"], byRatio.Pins.Select(p => p.Net));

        // 6600 ohm to 8 ohm at the 16 ohm end's tap ... the whole secondary is what the match names.
        Assert.Equal(Math.Sqrt(6600.0 / 8), Ratio(Find<TransformerPart>("T4")), 1e-9);
        Assert.Equal(200, Find<TransformerPart>("T4").Windings[0].SectionOhms.Sum(), 1e-9);

        // Screen taps are counted from the supply in the middle.
        var tapped = Find<TransformerPart>("T5");
        var half = tapped.Windings[0].SectionVolts.Sum() / 2;
        Assert.Equal([0.57, 0.43, 0.43, 0.57], tapped.Windings[0].SectionVolts.Select(v => Math.Round(v / half, 9)));
        Assert.Equal((40, 0.012), (tapped.PrimaryHenries, tapped.LeakageHenries));
    }

    private static double Ratio(TransformerPart part) =>
        part.Windings[0].SectionVolts.Sum() / part.Windings[1].SectionVolts.Sum();

    [Fact]
    public void MainsTransformersShareTheLoss()
    {
        var part = Find<TransformerPart>("T1");
        Assert.Equal([true, true, false, false, false], part.Windings.Select(w => w.IsPrimary));
        Assert.Equal(part.Windings[0].SectionOhms, part.Windings[1].SectionOhms);
        Assert.Equal([120.0], part.Windings[0].SectionVolts);
        Assert.Equal([0.1], part.Windings[3].SectionOhms);

        // A winding without amperes is given off load.
        Assert.Equal([5.0], part.Windings[4].SectionVolts);

        // 60 VA takes 0.40 * 60^-0.35 = 9.54 % in copper, half of it on each side; common practice, no source.
        var loss = 0.40 * Math.Pow(60, -0.35) / 2;
        Assert.Equal(loss * 120 * 120 / 30, part.Windings[0].SectionOhms[0], 1e-9);
        Assert.Equal(loss * 550 * 550 / (550 * 0.08), part.Windings[2].SectionOhms.Sum(), 1e-9);
    }

    [Fact]
    public void ChannelsHaveWhatTheyShare() =>
        Assert.Equal(
            [
                new SignalPath("first", "A", "B", 10e3, 0.05, double.PositiveInfinity),
                new SignalPath("second", "B", "HT1", 10e3, 1, 8),
            ],
            Sheet.Signals
        );

    [Fact]
    public void RelaysCoilsStepsAndCells()
    {
        var relay = Find<RelayPart>("K1");
        Assert.Equal((12, 400, 9, 1.2), (relay.RatedVolts, relay.Ohms, relay.PullInVolts, Math.Round(relay.ReleaseVolts, 9)));
        Assert.Equal(("K1", "on"), (Find<ContactPart>("K1a").SwitchName, Find<ContactPart>("K1a").Position));
        var coil = Find<InductorPart>("TK1");
        Assert.Equal(200, coil.CopperOhms);
        Assert.Equal(Math.Sqrt((2250.0 * 2250) - (200 * 200)) / (2 * Math.PI * 1000), coil.Henries, 1e-9);
        Assert.True(Find<PotPart>("VR5") is { Steps: 23, StepDecibels: 2, Ohms: 10e3, ControlName: "VOLUME" });
        Assert.True(Find<PotPart>("VR6") is { Steps: 21, Taper: Taper.Log, ControlName: "VOLUME" });
        Assert.True(double.IsNaN(Find<PotPart>("VR6").StepDecibels));
        Assert.Equal(["a", "k", "ra", "rb"], Find<OptocouplerPart>("OC1").Pins.Select(p => p.Electrode));
        Assert.Equal(DeviceKind.GasRegulator, Find<ValvePart>("V6").Device.Kind);
        Assert.Equal(["c", "b", "e"], Find<TransistorPart>("Q5").Pins.Select(p => p.Electrode));
    }

    [Fact]
    public void SwitchedJacksAreSwitches()
    {
        Assert.Equal(["J1", "J2", "K1", "POWER", "VOICE"], Sheet.Switches.Select(s => s.Name).Order(StringComparer.Ordinal));
        Assert.Equal(["out", "in"], Sheet.Switches.Single(s => s.Name == "J1").Positions);
        Assert.Equal(["off", "on"], Sheet.Switches.Single(s => s.Name == "K1").Positions);
        Assert.Equal(["on", "off"], Sheet.Switches[0].Positions);
    }

    [Fact]
    public void PointsMayNameParts()
    {
        Assert.Equal(7, Find<ResistorPart>("R1").AccessMinutes);
        Assert.Contains(new PointRemark("V1.p", null, "grey wire"), Sheet.Points);
    }

    private static T Find<T>(string designator)
        where T : Part => Assert.IsAssignableFrom<T>(Sheet.Parts.Single(p => p.Designator == designator));
}
