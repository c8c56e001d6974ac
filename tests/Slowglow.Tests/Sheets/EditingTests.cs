using CsCheck;
using Slowglow.Sheets;
using Slowglow.Sheets.Editing;
using Slowglow.Sheets.Parts.Resistor;

namespace Slowglow.Tests.Sheets;

/// <summary>Writing back: what a change does not touch stays as it was, byte for byte.</summary>
public class EditingTests
{
    private static readonly string Page = SheetFiles.Text("page.sheet.yaml");

    private static Sheet Read(string text) => SheetReader.Read(text, SmallLibrary.Library).Value!;

    [Fact]
    public void AValueChangesAndNothingElse()
    {
        var changed = new SheetText(Page).WithPart("D1", "1N4148  T1.3 -> HT1").Value!.Text;
        Assert.Equal(
            Page.Replace("1N4007                T1.3 -> HT1 ", "1N4148  T1.3 -> HT1 ", StringComparison.Ordinal),
            changed
        );
        Assert.Contains("1N4148  T1.3 -> HT1          # arrow = anode to cathode", changed, StringComparison.Ordinal);
    }

    [Fact]
    public void LineEndsStayAsTheyAre()
    {
        var windows = Page.Replace("\n", "\r\n", StringComparison.Ordinal);
        var changed = new SheetText(windows).WithPart("R4", "2k2 V1.8 -> GND").Value!.Text;
        Assert.Equal(windows.Replace("1k5                   V1.8 -> GND", "2k2 V1.8 -> GND", StringComparison.Ordinal), changed);
        var longer = new SheetText(windows).WithNewPart("R9", "1k A -> B").Value!.Text;
        Assert.DoesNotContain("\n", longer.Replace("\r\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void ALongFormBecomesALine()
    {
        var changed = new SheetText(Page).WithPart("T1", "{is: unknown}").Value;
        Assert.NotNull(changed);
        Assert.Contains("  T1: '{is: unknown}'\n  W1:", changed.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void AControlIsSet()
    {
        var changed = new SheetText(Page).WithControl("VOLUME", 0.755).Value!.Text;
        Assert.Equal(Page.Replace("VOLUME: 50 %", "VOLUME: 75.5 %", StringComparison.Ordinal), changed);
        Assert.Equal(0.755, Read(changed).Controls[0].Rotation, 1e-9);
        var flow = new SheetText("controls: { A: 50 %, B: 20 % } # two\n").WithControl("A", 1).Value!.Text;
        Assert.Equal("controls: { A: 100 %, B: 20 % } # two\n", flow);
    }

    [Fact]
    public void APartIsAddedLikeItsNeighbours()
    {
        var changed = new SheetText(Page).WithNewPart("R9", "47k OUT -> GND", "R3").Value!.Text;
        Assert.Contains("half\n  R9:   47k OUT -> GND\n  R4:", changed, StringComparison.Ordinal);
        var last = new SheetText(Page).WithNewPart("R9", "47k OUT -> GND").Value!.Text;
        Assert.Contains("EDGE\n  R9:   47k OUT -> GND\n\nsignal", last, StringComparison.Ordinal);
        Assert.Equal(47e3, Read(last).Parts.OfType<ResistorPart>().Single(r => r.Designator == "R9").Ohms);
    }

    [Fact]
    public void APartIsTakenOut()
    {
        var without = new SheetText(Page).WithoutPart("R3").Value!.Text;
        Assert.Equal(
            string.Concat(Page.Split('\n').Where(l => !l.StartsWith("  R3:", StringComparison.Ordinal)).Select(l => l + "\n"))[
                ..^1
            ],
            without
        );
        Assert.DoesNotContain(Read(new SheetText(Page).WithoutPart("T1").Value!.Text).Parts, p => p.Designator == "T1");
    }

    [Fact]
    public void TheFirstPartMakesItsSection()
    {
        Assert.Equal("unit: X\nparts:\n  R1: 10k A -> B\n", new SheetText("unit: X").WithNewPart("R1", "10k A -> B").Value!.Text);
        Assert.Equal(
            "parts:\n  R1: 10k A -> B\nunit: X\n",
            new SheetText("parts:\nunit: X\n").WithNewPart("R1", "10k A -> B").Value!.Text
        );
    }

    [Fact]
    public void WhatCannotBeDoneIsSaid()
    {
        Assert.Equal("there is no R99 under parts", new SheetText(Page).WithPart("R99", "1k A -> B").Findings.Single().Text);
        Assert.Equal("R1 is on the sheet already", new SheetText(Page).WithNewPart("R1", "1k A -> B").Findings.Single().Text);
        Assert.Equal("R99 is not on the sheet", new SheetText(Page).WithoutPart("R99").Findings.Single().Text);
    }

    [Fact]
    public void AnyValueReadsBackAndCanBeUndone() =>
        Gen.Select(Gen.Int[0, 18], Gen.String[Gen.Char["abZ09 .:#'\"{}[]&*!|>%@`,-=?"], 1, 12])
            .Where((_, text) => text.Trim() == text)
            .Sample(
                (index, text) =>
                {
                    var part = Read(Page).Parts[index].Designator;
                    var changed = new SheetText(Page).WithPart(part, text);
                    Assert.True(changed.Value is not null, $"{part} <- {text}");
                    if (part != "T1")
                    {
                        var line = Page.Split('\n').First(l => l.StartsWith($"  {part}:", StringComparison.Ordinal));
                        var old = line[line.IndexOf(line[(part.Length + 3)..].TrimStart(), StringComparison.Ordinal)..]
                            .Split("  #")[0]
                            .TrimEnd();
                        Assert.Equal(Page, changed.Value.WithPart(part, old).Value!.Text);
                    }
                },
                iter: 200
            );
}
