using Slowglow.Circuits;
using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>Words that a solved amplifier decides: tone of the hum, shape of the distortion, smoke, no power.</summary>
public sealed class ComboComplaintTests
{
    private static readonly Lazy<Knowledge> Combo = new(() => Known("kittiwake-15"));
    private static readonly Lazy<Knowledge> Mixer = new(() => Known("saltmarsh-lm2"));
    private static readonly Lazy<Knowledge> Monitor = new(() => Known("heronsgate-m60"));

    [Fact]
    public void A_dried_reservoir_buzzes_at_twice_mains()
    {
        // Full-wave rectifiers charge their reservoir twice a cycle (textbook).
        var h = Index(Mixer.Value, "C1", FailureMode.DriedOut);
        var (buzz, hum) = (Chance(Mixer.Value, "100 hz", h), Chance(Mixer.Value, "low hum", h));

        Assert.True(buzz > 0.6, $"{buzz}");
        Assert.True(hum < 0.5 * buzz, $"{hum} {buzz}");
    }

    [Fact]
    public void A_lost_bias_spreader_distorts_soft_signals()
    {
        // Class AB without standing current distorts small signals more than large ones (textbook).
        var knowledge = Monitor.Value;
        var worst = Enumerable
            .Range(1, knowledge.Source.Faults.Count)
            .Where(h => knowledge.Hypotheses[h].Faults[0] is { Mode: FailureMode.Short, Part: "Q9" or "C11" })
            .Select(h => Chance(knowledge, "crossover distortion", h))
            .DefaultIfEmpty(0)
            .Max();

        Assert.True(Chance(knowledge, "crossover distortion", 0) < 0.1);
        Assert.True(worst > 0.5, $"{worst}");
    }

    [Fact]
    public void A_unit_with_its_mains_fuse_open_shows_no_light()
    {
        Assert.True(Chance(Combo.Value, "no lights", Index(Combo.Value, "F1", FailureMode.Open)) > 0.9);
        Assert.True(Chance(Combo.Value, "no lights", Index(Combo.Value, "R10", FailureMode.Open)) < 0.1);
    }

    [Fact]
    public void A_part_far_over_its_watts_smokes()
    {
        Assert.True(Chance(Combo.Value, "smoke", Index(Combo.Value, "C2", FailureMode.Short)) > 0.8);
        Assert.True(Chance(Combo.Value, "smoke", 0) < 0.1);
    }

    private static Knowledge Known(string folder) => Knowledge.Of(new WorldSource(DemoUnits.Of(folder).Worlds), null, default);

    private static int Index(Knowledge knowledge, string part, FailureMode mode)
    {
        var faults = knowledge.Source.Faults;
        var worst = Enumerable.Range(0, faults.Count).Where(i => faults[i].Part == part && faults[i].Mode == mode);
        return worst.MinBy(i => faults[i].Severity) + 1;
    }

    private static double Chance(Knowledge knowledge, string words, int hypothesis)
    {
        var heard = new ComplaintReader(new ChannelWords(knowledge.Source.Sheet.Signals)).Read(words);
        var complaint = new ComplaintEvidence(
            knowledge.Source.Sheet,
            knowledge.Hypotheses,
            knowledge.Symptoms,
            knowledge.Traits,
            knowledge.Stresses,
            knowledge.Answers,
            knowledge.Masses
        );
        complaint.Ensure(heard, [hypothesis], null, default);
        return complaint.Chance(heard.Single(), hypothesis);
    }
}
