using Slowglow.Power.Limiter;
using Slowglow.Power.PowerUp;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>powerup</c> for people.</summary>
internal static class PowerUpReport
{
    private const int MostSuspects = 8;

    public static void Write(IAnsiConsole console, Sheet sheet, PowerUpPlan plan)
    {
        console.Say(
            $"Bringing up {sheet.Unit}, {Figures.Say(sheet.Mains.Volts, "V")}, lamp of {Figures.Say(plan.Lamp.Watts, "W")}."
        );
        Lamps(console, plan);
        for (var k = 0; k < plan.Steps.Count; k++)
        {
            Step(console, k + 1, plan.Steps[k]);
        }

        if (plan.Regulated.Count > 0)
        {
            console.Heading("Regulated rails stay low until the mains is high enough");
            foreach (var r in plan.Regulated)
            {
                console.Say(
                    double.IsNaN(r.MainsVolts)
                        ? $"{r.Rail}: never reaches its volts."
                        : $"{r.Rail}: {Figures.Say(r.Volts, "V")} from about {Figures.Say(r.MainsVolts, "V")} of mains on, lamp out."
                );
            }
        }

        if (plan.Reforming.Count > 0)
        {
            console.Heading("Old electrolytics");
            foreach (var line in plan.Reforming)
            {
                console.Say(line);
            }
        }

        CautionLines.Write(console);
    }

    private static void Lamps(IAnsiConsole console, PowerUpPlan plan)
    {
        console.Heading("Which lamp");
        var table = Layout.Table(
            ">Lamp",
            ">Healthy: of its watts",
            ">Of its light",
            ">Shorted: of its watts",
            ">Of its light",
            ">First rail has left",
            ""
        );
        foreach (var l in plan.Lamps)
        {
            table.Row(
                Figures.Say(l.Watts, "W"),
                Figures.Percent(l.HealthyShare),
                Figures.Percent(l.HealthyLight),
                Figures.Percent(l.ShortShare),
                Figures.Percent(l.ShortLight),
                Figures.Percent(l.RailShare),
                Verdict(l)
            );
        }

        console.Write(table);
    }

    private static string Verdict(LampChoice l) =>
        l.Suits ? "suits"
        : !l.TellsShort ? "does not tell a short plainly"
        : "starves the unit";

    private static void Step(IAnsiConsole console, int number, PowerUpStep step)
    {
        console.Heading($"{number}. {step.Title}");
        console.Say(step.Do);
        if (!double.IsNaN(step.LampShare))
        {
            console.Say(
                $"The lamp takes {Figures.Percent(step.LampShare)} of its watts and gives {Figures.Percent(step.LampLight)} of its light, once reservoirs and heaters have settled."
            );
        }

        if (!double.IsNaN(step.StopAmps))
        {
            console.Say($"Stop at once above {Figures.Say(step.StopAmps, "A", 2)} from the mains after the first second.");
        }

        var table = Layout.Table("Point", "", ">Should read", ">Band");
        foreach (var p in step.Points)
        {
            table.Row(
                p.Probe.Where,
                p.Probe.KindText,
                double.IsNaN(p.Nominal) ? (p.Unit == "ohm" ? "OL" : "nothing certain") : Figures.Shown(p.Nominal, p.Unit),
                Figures.Band(p.Low, p.High, p.Unit)
            );
        }

        console.Write(table);
        foreach (var sign in step.Signs)
        {
            var more = sign.Suspects.Count > MostSuspects ? $"; {sign.Suspects.Count - MostSuspects} more" : "";
            console.Say($"If {sign.Looks}: {string.Join("; ", sign.Suspects.Take(MostSuspects))}{more}.");
        }
    }
}
