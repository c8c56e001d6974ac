using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>Response, impedance, distortion, hum and noise of a channel for people.</summary>
internal static class CharacterReport
{
    private const double HighestShown = 20e3;
    private const int MostNoise = 4;
    private const int MostHarmonic = 5;

    /// <summary>Hum below this share of the whole is not worth a line.</summary>
    private const double LeastShare = 0.02;

    public static void Write(IAnsiConsole console, ChannelCharacter channel, ChannelCharacter? healthy)
    {
        Summary(console, channel, healthy);
        Response(console, channel.Response, healthy?.Response);
        Harmonics(console, channel.Harmonics);
        Hum(console, channel.Hum);
        Noise(console, channel.Noise);
    }

    private static void Summary(IAnsiConsole console, ChannelCharacter channel, ChannelCharacter? healthy)
    {
        var table = healthy is null ? Layout.Table("Beyond the level", "") : Layout.Table("Beyond the level", "", "Healthy");
        Line(table, "Within 3 dB of 1 kHz", channel, healthy, c => CharacterWords.Band(c.Response));
        Line(table, "Input impedance, 1 kHz", channel, healthy, c => CharacterWords.Ohms(c.Input));
        Line(table, "Output impedance, 1 kHz", channel, healthy, c => CharacterWords.Ohms(c.Output));
        Line(table, "Clean until", channel, healthy, c => CharacterWords.Clips(c.ClipsFirst));
        Line(table, "Full output up to", channel, healthy, c => CharacterWords.FullOutput(c.Slews));
        Line(table, "Noise, 20 Hz to 20 kHz", channel, healthy, c => Figures.Say(c.Noise?.Volts ?? double.NaN, "V", 2));
        Line(table, "  below the level by", channel, healthy, c => CharacterWords.Decibels(c.Noise?.SignalToNoiseDecibels));
        Line(table, "Feedback", channel, healthy, c => CharacterWords.Loop(c.Loop));
        console.Write(table);
    }

    private static void Line(
        Table table,
        string what,
        ChannelCharacter channel,
        ChannelCharacter? healthy,
        Func<ChannelCharacter, string> say
    )
    {
        if (healthy is null)
        {
            table.Row(what, say(channel));
        }
        else
        {
            table.Row(what, say(channel), say(healthy));
        }
    }

    private static void Response(IAnsiConsole console, FrequencyResponse? response, FrequencyResponse? healthy)
    {
        if (response is null)
        {
            return;
        }

        var table = healthy is null
            ? Layout.Table("Response", ">Level", ">Against 1 kHz", ">Spread")
            : Layout.Table("Response", ">Level", ">Against 1 kHz", ">Spread", ">Healthy");
        for (var k = 0; k < response.Points.Count && response.Points[k].Hertz <= HighestShown; k++)
        {
            var p = response.Points[k];
            List<string> cells =
            [
                Figures.Say(p.Hertz, "Hz"),
                Figures.Say(p.Volts, "V"),
                CharacterWords.Decibels(p.Decibels),
                CharacterWords.Spread(p.SigmaDecibels),
                .. healthy is null ? [] : new[] { CharacterWords.Decibels(healthy.Points[k].Decibels) },
            ];
            table.Row([.. cells]);
        }

        console.Write(table);
    }

    private static void Harmonics(IAnsiConsole console, IReadOnlyList<HarmonicContent> harmonics)
    {
        string[] orders = [">2nd", ">3rd", ">4th", ">5th", ">6th"];
        var table = Layout.Table(["Distortion with", ">At the output", ">In all", .. orders.Take(MostHarmonic)]);
        foreach (var content in harmonics)
        {
            string[] parts = [.. content.Harmonics.Take(MostHarmonic).Select(Figures.Percent)];
            table.Row([
                $"{Figures.Say(content.GeneratorVolts, "V")} in",
                Figures.Say(content.OutputVolts, "V"),
                Figures.Percent(content.Distortion),
                .. parts,
            ]);
        }

        if (harmonics.Count > 0)
        {
            console.Write(table);
        }
    }

    private static void Hum(IAnsiConsole console, HumSplit? hum)
    {
        if (hum is null || !(hum.Volts > 0))
        {
            return;
        }

        var table = Layout.Table("Hum comes by", ">Ripple there", ">At the output", ">At mains", ">At twice mains");
        foreach (var cause in hum.Causes.Where(c => c.OutputVolts >= LeastShare * hum.Volts))
        {
            table.Row(
                CharacterWords.Way(cause),
                Figures.Say(cause.RippleVolts, "V", 2),
                Figures.Say(cause.OutputVolts, "V", 2),
                Figures.Say(cause.MainVolts, "V", 2),
                Figures.Say(cause.TwiceVolts, "V", 2)
            );
        }

        console.Write(table);
    }

    private static void Noise(IAnsiConsole console, NoiseFloor? noise)
    {
        if (noise is null || !(noise.Volts > 0))
        {
            return;
        }

        var table = Layout.Table("Noise comes from", ">At the output", ">Share", "");
        foreach (var source in noise.Sources.Take(MostNoise))
        {
            var share = Math.Pow(source.OutputVolts / noise.Volts, 2);
            table.Row(
                source.Part,
                Figures.Say(source.OutputVolts, "V", 2),
                Figures.Percent(share),
                CharacterWords.Kind(source.Kind)
            );
        }

        console.Write(table);
    }
}
