using Slowglow.Diagnosis.Complaints;

namespace Slowglow.Tests.Diagnosis;

/// <summary>What a customer would hardly have left out. Weights are common practice, no source: only their order is held here.</summary>
public sealed class UnsaidTests
{
    private static readonly Symptoms Well = new(true, 0, 0, 0, 0.01, 0.01, 0, 0);

    private static double Chance(Symptoms s, params Descriptor[] said) => Unsaid.Chance(said, s);

    [Fact]
    public void A_channel_that_is_well_is_brought_in_with_any_word() => Assert.Equal(1, Chance(Well, Descriptor.Hum), 0.02);

    [Fact]
    public void Whoever_hears_hum_only_has_no_dead_channel()
    {
        var dead = Well with { DropDb = 60 };
        Assert.InRange(Chance(dead, Descriptor.Hum), 0.1, 0.2);
        Assert.Equal(1, Chance(dead, Descriptor.Silent));
        Assert.Equal(1, Chance(dead, Descriptor.NoPower));
    }

    [Fact]
    public void Loud_hum_is_mentioned_and_faint_hum_is_not()
    {
        Assert.InRange(Chance(Well with { HumRiseDb = 40 }, Descriptor.Quiet), 0.3, 0.5);
        Assert.InRange(Chance(Well with { HumRiseDb = 8 }, Descriptor.Quiet), 0.95, 1);
        Assert.Equal(1, Chance(Well with { HumRiseDb = 40 }, Descriptor.Hum), 0.01);
    }

    [Fact]
    public void Nobody_misses_the_distortion_of_a_dead_channel()
    {
        var rough = Well with { Distortion = 0.6 };
        Assert.InRange(Chance(rough, Descriptor.Hum), 0.4, 0.6);
        Assert.Equal(Chance(Well with { DropDb = 60 }, Descriptor.Hum), Chance(rough with { DropDb = 60 }, Descriptor.Hum), 0.01);
    }

    [Fact]
    public void A_world_that_does_not_settle_says_nothing() =>
        Assert.Equal(1, Chance(new Symptoms(false, 90, 0, 0, 1, 0, 60, 0), Descriptor.Thin));
}
