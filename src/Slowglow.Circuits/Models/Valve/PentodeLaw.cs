using System.Runtime.Intrinsics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>
/// Pentode or beam tetrode: anode current by Koren (Glass Audio 8(5), 1996), with a little of the anode's field in the drive; screen
/// current in proportion to the same drive, rising as the anode's volts fall to a knee that may go with the screen's volts or with the drive,
/// and by a share of what the anode turns back. Ports: anode, grid, screen; reference cathode.
/// </summary>
internal class PentodeLaw : Law
{
    internal enum Constant
    {
        Mu,
        Ex,
        Kg1,
        Kg2,
        Kp,
        Kvb,
        ScreenRise,
        GridAmps,
        GridSharpness,
        GridExponent,

        /// <summary>Share of the anode's volts that acts like grid volts: one over mua; 0 for a perfect screen.</summary>
        AnodePull,

        /// <summary>Anode volts at which the screen takes half its rise: volts, a share of the screen's own, and times the drive.</summary>
        ScreenKneeVolts,
        ScreenKneeShare,
        ScreenKneePerDrive,

        /// <summary>Share of what the anode turns back that the screen takes; 0 to 1.</summary>
        TurnedBack,

        /// <summary>1 as made; the fraction of emission left; 0 = dead.</summary>
        Emission,
    }

    public override int Ports => 3;
    public override int Constants => 16;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var anode = TriodeLaw.Positive(volts[0], out var positive);
        var grid = volts[1];
        var screen = TriodeLaw.Positive(volts[2], out var screenPositive);
        var emission = constants[(int)Constant.Emission];
        var kp = constants[(int)Constant.Kp];
        var pull = constants[(int)Constant.AnodePull];
        var pulled = grid + (anode * pull);
        var soft = Lanes.SoftPlus(kp * ((Lanes.One / constants[(int)Constant.Mu]) + (pulled / screen)), out var sigma);
        var drive = screen * soft / kp;
        var byAnode = sigma * pull * positive;
        var byScreen = ((soft / kp) - (sigma * pulled / screen)) * screenPositive;
        var space = TriodeLaw.PowerLaw(drive, constants[(int)Constant.Ex], 2 * emission, out var perDrive);

        var kvb = constants[(int)Constant.Kvb];
        var angle = Lanes.ArcTan(anode / kvb);
        var angleSlope = positive * kvb / ((kvb * kvb) + (anode * anode));
        var perKg1 = Lanes.One / constants[(int)Constant.Kg1];
        currents[0] = space * angle * perKg1;
        slopes[0] = ((space * angleSlope) + (perDrive * byAnode * angle)) * perKg1;
        slopes[1] = perDrive * sigma * angle * perKg1;
        slopes[2] = perDrive * byScreen * angle * perKg1;

        TriodeLaw.GridCurrent(
            grid,
            constants[(int)Constant.GridAmps] * emission,
            constants[(int)Constant.GridSharpness],
            constants[(int)Constant.GridExponent],
            out currents[1],
            out slopes[4]
        );
        (slopes[3], slopes[5]) = (Lanes.Zero, Lanes.Zero);

        var perKg2 = Lanes.One / constants[(int)Constant.Kg2];
        var rise = constants[(int)Constant.ScreenRise] * perKg2;
        var share = constants[(int)Constant.ScreenKneeShare];
        var kneePerDrive = constants[(int)Constant.ScreenKneePerDrive];
        var knee = constants[(int)Constant.ScreenKneeVolts] + (share * screen) + (kneePerDrive * drive);
        var square = (knee * knee) + (anode * anode);
        var turned = Lanes.One - (2 / Math.PI * angle);
        var back = constants[(int)Constant.TurnedBack] * (Math.PI / 2) * perKg1;
        var part = perKg2 + (rise * (Lanes.One - (2 / Math.PI * Lanes.ArcTan(anode / knee)))) + (back * turned * turned);
        var falls = space * rise * (2 / Math.PI) / square;
        var spreads = perDrive * part + (falls * anode * kneePerDrive);
        currents[2] = space * part;
        slopes[6] = (spreads * byAnode) - (falls * knee * positive) - (4 / Math.PI * space * back * turned * angleSlope);
        slopes[7] = spreads * sigma;
        slopes[8] = (spreads * byScreen) + (falls * anode * share * screenPositive);
    }

    public override Lane Moved(ReadOnlySpan<Lane> before, ReadOnlySpan<Lane> after, ReadOnlySpan<Lane> constants) =>
        Beyond(before[0], after[0], TriodeLaw.AnodeBend(before[0]))
        | Beyond(before[1], after[1], TriodeLaw.GridBend(constants[(int)Constant.GridSharpness]))
        | Beyond(before[2], after[2], TriodeLaw.AnodeBend(before[2]));

    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        var stride = Lanes.All(2) + (Lanes.All(0.5) * Vector256.Abs(before[1]));
        volts[1] = Vector256.Min(Vector256.Max(volts[1], before[1] - (4 * stride)), before[1] + stride);
        var screenStride = Lanes.All(50) + (Lanes.All(0.5) * Vector256.Abs(before[2]));
        volts[2] = Vector256.Min(Vector256.Max(volts[2], before[2] - screenStride), before[2] + screenStride);
    }
}
