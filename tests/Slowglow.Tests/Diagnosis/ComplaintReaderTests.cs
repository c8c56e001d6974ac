using Slowglow.Diagnosis.Complaints;
using Slowglow.Sheets;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

public sealed class ComplaintReaderTests
{
    private static readonly SignalPath[] Paths =
    [
        new("normal", "IN1", "OUT", 1e3, 0.1, 8),
        new("bright", "IN2", "OUT", 1e3, 0.1, 8),
    ];

    [Theory]
    [InlineData("first channel thin and gritty, second one fine", "thin/normal rough early/normal fine/bright")]
    [InlineData("gritty on the first channel only", "rough early/normal fine/bright")]
    [InlineData("thin, gritty on channel 2; hums", "thin/bright rough early/bright hum/-")]
    [InlineData("Bright channel is dead. Normal channel works normally.", "silent/bright fine/normal")]
    [InlineData("hums even with the volume down", "hum/-")]
    [InlineData("no hum but very quiet", "not hum/- quiet/-")]
    [InlineData("no sound from either channel", "silent/-")]
    [InlineData("silent, one rail's fuse blown", "silent/- blows fuse/-")]
    [InlineData("left is muffled but the other channel is ok", "dull/normal fine/bright")]
    [InlineData("buzz and DC on the output", "hum at twice mains/- offset/-")]
    [InlineData("crackles and cuts out when warm", "crackle/- intermittent/- fails when warm/-")]
    [InlineData("not working", "silent/-")]
    [InlineData("low hum on channel 1, 100 Hz on the other", "hum at mains/normal hum at twice mains/bright")]
    [InlineData("gritty at low volume, one half missing", "rough when soft (crossover)/- one-sided distortion/-")]
    [InlineData("went up in smoke, keeps blowing the fuse", "smoke/- blows fuse/-")]
    [InlineData("squeals and hisses, fine when cold", "squeal/- noise/- fails when warm/-")]
    [InlineData("slow to come up, clears when warm", "fails when cold/-")]
    [InlineData("bass is gone and no sparkle", "thin/- dull/-")]
    [InlineData("no signal through, heaters out", "silent/- no power/-")]
    [InlineData("", "")]
    [InlineData("?!,,; ... ''  --", "")]
    [InlineData("my dog chewed it", "")]
    public void Words_are_taken_as_meant(string complaint, string expected)
    {
        var heard = new ComplaintReader(new ChannelWords(Paths)).Read(complaint);

        var said = heard.Select(h => $"{(h.Denied ? "not " : "")}{Descriptors.Say(h.Descriptor)}/{h.Channel ?? "-"}");
        Assert.Equal(expected, string.Join(' ', said));
    }

    [Fact]
    public void The_volume_turned_down_is_a_condition_of_the_hum()
    {
        var heard = new ComplaintReader(new ChannelWords(Paths)).Read("hums even with the volume down");

        Assert.True(heard.Single().VolumeDown);
    }

    [Fact]
    public void A_control_that_is_named_is_a_condition()
    {
        Control[] controls = [new("TREBLE", 0.5, Place.None), new("VOLUME1", 0.5, Place.None)];
        var reader = new ComplaintReader(new ChannelWords(Paths), new ControlWords(controls));

        Assert.Equal(1, reader.Read("distorts with the treble up").Single().Controls["TREBLE"]);
        Assert.Equal(1, reader.Read("squeals when turned up full").Single().Controls["VOLUME1"]);
        Assert.Equal(", with TREBLE down", reader.Read("hums with the treble down").Single().Setting);
        Assert.Empty(reader.Read("no treble").Single().Controls);
    }

    [Fact]
    public void What_is_not_understood_is_said_so()
    {
        var reader = new ComplaintReader(new ChannelWords(Paths));

        Assert.Equal(["my dog chewed it"], reader.PassedOver("hums, my dog chewed it, on channel 2"));
    }

    [Fact]
    public void A_unit_with_one_path_has_no_channels()
    {
        var heard = new ComplaintReader(new ChannelWords([Paths[0]])).Read("first channel quiet");

        Assert.Null(heard.Single().Channel);
    }
}
