using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Quantities;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>How each channel ends up under a story, and why one that still works does so.</summary>
internal sealed class ChannelChain(Knowledge knowledge, AnswerBlock block, CancellationToken cancel)
{
    /// <summary>A channel works when its level holds within this and nothing else is heard, dB.</summary>
    private const double SameDb = 2;
    private const double HeardDb = 6;

    /// <summary>A point that moves by less than this share holds still.</summary>
    private const double Still = 0.02;

    /// <summary>A net carries a channel's signal from this level on, volts.</summary>
    private const double Carries = 1e-3;

    public IEnumerable<string> Of(int hypothesis, HashSet<string> own)
    {
        var sounds = knowledge.Source.Sheet.Signals.Select(s => (s.Name, Sound: SoundOf(s.Name, hypothesis))).ToList();
        string[] bad = [.. sounds.Where(s => s.Sound.Settled && !Works(s.Sound)).Select(s => s.Name)];
        foreach (var (name, sound) in sounds.Where(s => s.Sound.Settled))
        {
            var who = sounds.Count == 1 ? "The output" : $"Channel {name}";
            if (!Works(sound))
            {
                yield return $"{who} {string.Join(" and ", Complaints(sound))}.";
            }
            else if (bad.Length > 0)
            {
                yield return $"{who} still works: {WhyItWorks(name, hypothesis, own)}.";
            }
        }
    }

    private Symptoms SoundOf(string channel, int h)
    {
        var plain = new Heard("", Descriptor.Fine, channel, false, false);
        knowledge.Symptoms.Ensure(channel, plain, [h], null, cancel);
        return knowledge.Symptoms.Of(channel, plain, h);
    }

    private static bool Works(Symptoms s) => !Complaints(s).Any();

    private static IEnumerable<string> Complaints(Symptoms s)
    {
        if (s.DropDb > 50)
        {
            yield return "falls silent";
        }
        else if (Math.Abs(s.DropDb) > SameDb)
        {
            yield return $"ends {Engineering.Format(Math.Abs(s.DropDb), "dB", 2)} {(s.DropDb > 0 ? "down" : "up")}";
        }
        if (s.DropDb < 40 && s.Distortion > Math.Max(0.04, 2 * s.HealthyDistortion))
        {
            yield return $"distorts {Engineering.Format(100 * s.Distortion, "%", 2)} at half drive (healthy: {Engineering.Format(100 * s.HealthyDistortion, "%", 2)})";
        }
        if (s.DropDb < 40 && s.BassDropDb > 4)
        {
            yield return $"loses {Engineering.Format(s.BassDropDb, "dB", 2)} of bass";
        }
        if (s.DropDb < 40 && s.TrebleDropDb > 4)
        {
            yield return $"loses {Engineering.Format(s.TrebleDropDb, "dB", 2)} of treble";
        }
        if (s.HumRiseDb > HeardDb)
        {
            yield return $"hums {Engineering.Format(s.HumRiseDb, "dB", 2)} above what is normal";
        }
        if (s.OffsetVolts > 0.3)
        {
            yield return $"holds {Engineering.Format(s.OffsetVolts, "V", 2)} of DC that does not belong there";
        }
    }

    /// <summary>Its signal does not pass the part, and its own points hold still; with the one that moves most.</summary>
    private string WhyItWorks(string channel, int h, HashSet<string> own)
    {
        var nets = NetsOf(channel);
        var passes = nets.Overlaps(own);
        var part = string.Join(" and ", knowledge.Hypotheses[h].Faults.Select(f => f.Part).Distinct());
        var away = passes ? $"it passes {part} but keeps its level" : $"its signal does not pass {part}";
        var most = Enumerable
            .Range(0, block.Probes.Count)
            .Where(p => block.Probes[p] is { Kind: ProbeKind.Dc } probe && nets.Contains(probe.Red) && !own.Contains(probe.Red))
            .Where(p => block.Alone(0, p) is { HasFigure: true } good && block.Alone(h, p).HasFigure && Math.Abs(good.Mean) > 1)
            .OrderByDescending(p => Math.Abs(block.MeanOf(h, p) / block.MeanOf(0, p) - 1))
            .Take(1)
            .Select(p =>
                Math.Abs(block.MeanOf(h, p) / block.MeanOf(0, p) - 1) < Still
                    ? ", and the points on its way hold still"
                    : $", and of the points on its way {block.Probes[p].Where} moves most, to {ReadingWords.Value(block.Probes[p], block.MeanOf(h, p))} "
                        + $"(healthy: {ReadingWords.Value(block.Probes[p], block.MeanOf(0, p))})"
            );
        return away + string.Concat(most);
    }

    /// <summary>Nets that carry the channel's signal in a healthy unit and that no other channel uses.</summary>
    private HashSet<string> NetsOf(string channel)
    {
        var others = knowledge.Source.Sheet.Signals.Where(s => s.Name != channel).SelectMany(s => Carrying(s.Name)).ToHashSet();
        return [.. Carrying(channel).Where(n => !others.Contains(n))];
    }

    private IEnumerable<string> Carrying(string channel)
    {
        var first = knowledge.Source.Sheet.Signals[0].Name == channel;
        var levels = first ? block : knowledge.BlockOf(Setup.Default with { Name = channel, Channel = channel });
        return levels.Has(0)
            ? Enumerable
                .Range(0, levels.Probes.Count)
                .Where(p => levels.Probes[p].Kind == ProbeKind.Level && levels.Alone(0, p) is { HasFigure: true } level)
                .Where(p => Scale.Of(levels.Probes[p]).From(levels.MeanOf(0, p)) > Carries)
                .Select(p => levels.Probes[p].Red)
            : [];
    }
}
