using Slowglow.Circuits;
using Slowglow.Sheets;

namespace Slowglow.Tests.Circuits;

/// <summary>Circuits that cannot be right: each is named, with its place and what would be right.</summary>
public sealed class CircuitCheckTests
{
    private const string Head = """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:

        """;

    public static TheoryData<string, string, Severity, int, string, string> Cases() =>
        new()
        {
            {
                "missing ground",
                "  R1: 10k A -> B\n  R2: 10k B -> A\n",
                Severity.Error,
                5,
                "nothing is connected to GND, so no voltage has a reference",
                "name the chassis net GND on the parts that go to it"
            },
            {
                "floating net",
                "  R1: 10k A -> GND\n  C1: 10n A -> B\n  C2: 10n B -> GND\n",
                Severity.Warning,
                6,
                "net B hangs in the air: only C1, C2 reach it, and no direct current flows there",
                "look for a missing resistor or a misspelt net name"
            },
            {
                "no cathode return",
                "  V1: 12AX7\n  R1: 100k HT -> V1.1\n  R2: 1M V1.2 -> GND\n  R3: 10k HT -> GND\n  C1: 22u 25V V1.3 -> GND\n",
                Severity.Error,
                5,
                "the cathode of V1 (pin 3) has no path to GND",
                "connect V1.3 through its cathode resistor, or to GND"
            },
            {
                "loop of sources",
                """
                      T1:
                        is: transformer 20 VA
                        windings:
                          P: { pins: 1-2, volts: 230 V, ohms: 60 }
                          A: { pins: 3-4, volts: 12 V, ohms: 1 }
                          B: { pins: 5-6, volts: 9 V, ohms: 1 }
                      W1: wire T1.3 -> T1.5
                      W2: wire T1.4 -> T1.6
                      R1: 1k T1.3 -> GND
                    """,
                Severity.Error,
                5,
                "winding B of T1 is joined into a loop of sources in which 3 V are left over",
                "check the pins of the windings and the wires between them: parallel windings need equal volts and the same sense"
            },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Each_slip_is_named(string slip, string parts, Severity severity, int line, string text, string remedy)
    {
        var sheet = SheetReader.Read(Head + parts);
        Assert.True(sheet.Value is not null, slip + string.Join('\n', sheet.Findings));
        var findings = Circuit.From(sheet.Value).Findings;
        var finding = Assert.Single(findings, f => f.Severity == severity);
        Assert.Equal(text, finding.Text);
        Assert.Equal(remedy, finding.Remedy);
        Assert.Equal(line, finding.Place.Line);
        Assert.Equal(severity == Severity.Error, Circuit.From(sheet.Value).Value is null);
    }
}
