using System.Globalization;
using Slowglow.Power.Rewinding;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The winder's specification on one page.</summary>
internal static class RewindReport
{
    public static void Write(IAnsiConsole console, Sheet sheet, RewindAnswer answer, IReadOnlyList<WoundCheckRow> form)
    {
        var design = answer.Design;
        console.Say(
            $"Mains transformer {answer.Part} of {sheet.Unit}{(sheet.Maker is { } maker ? $", {maker}" : "")}: specification for winding"
        );
        if (answer.Refusal is { } refusal)
        {
            console.Say(refusal);
            console.Say(
                answer.Larger is { } larger
                    ? $"The smallest standard core that takes it: {larger.Core}. What follows is the design that does not do."
                    : "No standard core takes it. What follows is the design that does not do."
            );
        }

        Duties(console, answer.Duties);
        Windings(console, design);
        Core(console, design);
        Straps(console, answer.Primary);
        RailsAfter(console, answer.Rails);
        Tests(console, answer.Tests);
        console.Heading("For the winder");
        foreach (var note in answer.Notes)
        {
            console.Say(note);
        }

        Form(console, form);
        CautionLines.Write(console);
    }

    private static void Duties(IAnsiConsole console, IReadOnlyList<WindingDuty> duties)
    {
        console.Heading("What it does in this unit, as drawn and measured");
        var table = Layout.Table("Winding", ">Off load", ">On load", ">Rms", ">DC", ">Crest", ">VA", ">Drawing says");
        foreach (var d in duties)
        {
            table.Row(
                d.Name,
                Figures.Say(d.OffLoadVolts, "V"),
                Figures.Say(d.LoadedVolts, "V"),
                Figures.Say(d.AmpsRms, "A"),
                Figures.Shown(d.AmpsDc, "A"),
                Figures.Say(d.AmpsCrest, "A"),
                Figures.Say(d.VoltAmperes, "VA"),
                Figures.Say(d.RatedAmps, "A")
            );
        }

        console.Write(table);
    }

    private static void Windings(IAnsiConsole console, WoundDesign design)
    {
        console.Heading("Windings, from the tongue outwards");
        var table = Layout.Table(
            "Winding",
            ">Turns",
            "Wire",
            ">Length",
            ">Layers",
            ">Ohms, cold",
            ">Off load",
            ">On load",
            ">Amps",
            ">A/mm²",
            ">Heat",
            ">Drop"
        );
        foreach (var w in design.Windings)
        {
            table.Row(
                w.Name,
                string.Join(" + ", w.SectionTurns.Select(t => t.ToString(CultureInfo.InvariantCulture))),
                w.Strands > 1 ? $"{w.Strands} x {w.Wire}" : w.Wire.ToString(),
                $"{Figures.Say(Math.Round(w.Metres, 1), "")} m",
                w.Layers.ToString(CultureInfo.InvariantCulture),
                Figures.Say(w.ColdOhms, "ohm"),
                Figures.Say(w.OffLoadVolts, "V"),
                Figures.Say(w.LoadedVolts, "V"),
                Figures.Say(w.Amps, "A"),
                Figures.Say(w.Density, ""),
                Figures.Say(w.Watts, "W", 2),
                w.Need.IsPrimary ? "" : Figures.Percent(w.Regulation)
            );
        }

        console.Write(table);
    }

    private static void Core(IAnsiConsole console, WoundDesign design)
    {
        console.Heading("Core and heat");
        var table = Layout.Table("What", ">Figure");
        table.Row("core", design.Core.ToString());
        table.Row("iron", design.Steel.Name);
        table.Row("weight of the iron", $"{Figures.Say(design.Core.Kilograms, "")} kg");
        table.Row("given out, all secondaries", Figures.Say(design.VoltAmperes, "VA"));
        table.Row("turns per volt", Figures.Say(design.TurnsPerVolt, ""));
        table.Row(
            "flux density, nominal and highest mains",
            $"{Figures.Say(design.Tesla, "T")}, {Figures.Say(design.HighTesla, "T")}"
        );
        table.Row(
            "loss in iron and copper",
            $"{Figures.Say(design.IronWatts, "W", 2)}, {Figures.Say(design.CopperWatts, "W", 2)}"
        );
        table.Row("primary current, nothing drawn", $"about {Figures.Say(design.OffLoadAmps, "A", 2)}, within a factor of two");
        table.Row("window fill", Figures.Percent(design.Fill));
        table.Row("rise of the windings", $"{Figures.Say(design.RiseKelvin, "K", 2)}");
        foreach (var check in design.Checks)
        {
            table.Row(
                check.Holds ? $"holds: {check.What}" : $"MISSED: {check.What}",
                $"{Figures.Say(check.Value, check.Unit)} of {Figures.Say(check.Most, check.Unit)}"
            );
        }

        console.Write(table);
    }

    private static void Straps(IAnsiConsole console, TappedPrimary? primary)
    {
        if (primary is null)
        {
            return;
        }

        console.Heading("Primary in two equal halves, P1 and P2");
        console.Say($"Taps of each half, from its start: 0, {string.Join(", ", primary.Taps.Select(t => Figures.Say(t, "V")))}.");
        foreach (var s in primary.Straps)
        {
            console.Say(
                s.InSeries
                    ? $"{Figures.Say(s.Volts, "V")}: P1 from 0 to {Figures.Say(s.FirstTap, "V")}, in series with P2 from 0 to {Figures.Say(s.SecondTap, "V")}: tap of P1 to start of P2."
                    : $"{Figures.Say(s.Volts, "V")}: starts together, {Figures.Say(s.FirstTap, "V")} taps together."
            );
        }
    }

    private static void RailsAfter(IAnsiConsole console, IReadOnlyList<RailCheck> rails)
    {
        console.Heading("With it in the circuit");
        var table = Layout.Table("Fed by", "Where", ">Belongs", ">Gives", ">Off by");
        foreach (var r in rails)
        {
            var kind = r.IsAc ? " ac" : "";
            table.Row(
                r.Winding,
                r.Where,
                Figures.Say(r.Asked, "V") + kind,
                Figures.Say(r.Given, "V") + kind,
                Figures.Percent(r.Error)
            );
        }

        console.Write(table);
    }

    private static void Tests(IAnsiConsole console, IReadOnlyList<FlashTest> tests)
    {
        console.Heading("Flash test at the winder's; the winder's own standard goes first");
        var table = Layout.Table("Between", ">Rms", ">For", "Figure from");
        foreach (var t in tests)
        {
            table.Row(t.Between, $"{Figures.Say(t.VoltsRms, "")} V", Figures.Say(t.Seconds, "s"), t.Source);
        }

        console.Write(table);
    }

    private static void Form(IAnsiConsole console, IReadOnlyList<WoundCheckRow> form)
    {
        console.Heading("Check of the wound part");
        var table = Layout.Table("What", ">Expected", ">From", ">To", ">Measured", "Verdict");
        foreach (var row in form)
        {
            table.Row(
                row.What,
                Figures.Say(row.Expected, row.Unit),
                Figures.Say(row.Low, row.Unit),
                Figures.Say(row.High, row.Unit),
                double.IsNaN(row.Measured) ? "________" : Figures.Say(row.Measured, row.Unit),
                row.Passes switch
                {
                    true => "passes",
                    false => "FAILS",
                    null => "",
                }
            );
        }

        table.Row("flash tests, as above", "", "", "", "________", "");
        console.Write(table);
    }
}
