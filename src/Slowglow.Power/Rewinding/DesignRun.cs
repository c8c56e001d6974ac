namespace Slowglow.Power.Rewinding;

/// <summary>One design on one core at one current density: turns, wire, length, copper, drop and warmth, in turns until they agree.</summary>
internal sealed class DesignRun
{
    private const int Rounds = 16;

    /// <summary>Thicker wire is wound as two.</summary>
    private const double StiffMillimetres = 1.7;

    private readonly CoreStack core;
    private readonly TransformerNeed need;
    private readonly DesignLimits limits;
    private readonly double density;
    private readonly WindingNeed[] order;
    private readonly Coil[] coils;
    private double rise = 40;
    private double ironWatts;

    private sealed class Coil
    {
        public double Amps;
        public double SagAmps;
        public int[] Turns = [];
        public WireSize Wire;
        public int Strands = 1;
        public int Layers;
        public double Build;
        public double MeanTurn;
        public double ColdOhms;
        public double HotOhms;
    }

    public DesignRun(CoreStack core, TransformerNeed need, DesignLimits limits, double density)
    {
        (this.core, this.need, this.limits, this.density) = (core, need, limits, density);
        order = [.. need.Primaries, .. need.Secondaries.OrderByDescending(w => w.Volts)];
        coils = [.. order.Select(w => new Coil { Amps = w.Amps, SagAmps = w.SagAmps })];
    }

    private double PrimaryVolts => order.Where(w => w.IsPrimary).Sum(w => w.Volts);

    public WoundDesign Finish()
    {
        var tesla = limits.Tesla ?? limits.Steel.DesignTesla;
        var least = core.TurnsPerVolt(tesla, need.Hertz);
        for (var round = 0; round < Rounds; round++)
        {
            FeedPrimaries();
            WindTurns(least);
            LayWires();
            Warm();
        }

        return Design();
    }

    /// <summary>Primaries carry what the secondaries give, the losses, and the magnetising current across it.</summary>
    private void FeedPrimaries()
    {
        // On a core far too small the losses know no end; such a design misses its limits either way.
        var lost = Math.Min(ironWatts + CopperWatts(), need.VoltAmperes);
        double Carried(Func<Coil, double> amps) =>
            (need.Reflected * order.Zip(coils).Where(w => !w.First.IsPrimary).Sum(w => w.First.Volts * amps(w.Second))) + lost;
        var most = Carried(c => c.Amps) / (need.SpreadVolts ?? PrimaryVolts);
        var sag = Carried(c => c.SagAmps) / PrimaryVolts;
        var turns = order.Zip(coils).Where(w => w.First.IsPrimary).Sum(w => w.Second.Turns.Sum());
        var across = turns > 0 ? Magnetising(turns) : 0;
        foreach (var (_, coil) in order.Zip(coils).Where(w => w.First.IsPrimary))
        {
            coil.Amps = Math.Sqrt((most * most) + (across * across));
            coil.SagAmps = sag;
        }
    }

    private double CopperWatts() => coils.Sum(c => double.IsNaN(c.Amps) ? 0 : c.Amps * c.Amps * c.HotOhms);

    private double Magnetising(int turns) => limits.Steel.AmpereTurns(core, Tesla) / turns;

    private double Tesla => core.Tesla(order[0].Volts / coils[0].Turns.Sum(), need.Hertz);

    /// <summary>The fewest primary turns that keep the flux down and bring every secondary near its volts in whole turns.</summary>
    private void WindTurns(double leastPerVolt)
    {
        const double MostMore = 1.08;
        var fewest = (int)Math.Ceiling((leastPerVolt * order[0].Volts) - 1e-6);
        var (best, bestError) = (fewest, double.PositiveInfinity);
        for (var turns = fewest; turns <= Math.Max(fewest * MostMore, fewest + 1); turns++)
        {
            var error = order.Zip(coils).Where(w => !w.First.IsPrimary).Max(w => RoundingError(w.First, w.Second, turns));
            if (error < bestError)
            {
                (best, bestError) = (turns, error);
            }

            if (bestError < limits.MostVoltsError / 2)
            {
                break;
            }
        }

        foreach (var (winding, coil) in order.Zip(coils))
        {
            coil.Turns = [.. winding.SectionVolts.Select((_, s) => (int)Math.Max(1, Math.Round(Wanted(winding, coil, s, best))))];
        }
    }

    /// <summary>Turns that a section wants, before rounding, for so many on the first primary.</summary>
    private double Wanted(WindingNeed winding, Coil coil, int section, int primaryTurns)
    {
        if (winding.IsPrimary)
        {
            return winding.SectionVolts[section] * primaryTurns / order[0].Volts;
        }

        var drop = coils[0].SagAmps * coils[0].HotOhms;
        var perTurn = Math.Max(order[0].Volts - drop, 0.5 * order[0].Volts) / primaryTurns;
        var share = winding.SectionVolts[section] / winding.Volts;
        var own = Math.Min(coil.SagAmps * coil.HotOhms, winding.Volts);
        return (winding.SectionVolts[section] + (share * own)) / perTurn;
    }

    private double RoundingError(WindingNeed winding, Coil coil, int primaryTurns) =>
        Enumerable
            .Range(0, winding.SectionVolts.Count)
            .Max(s =>
            {
                var wanted = Wanted(winding, coil, s, primaryTurns);
                return Math.Abs((Math.Max(1, Math.Round(wanted)) / wanted) - 1);
            });

    private void LayWires()
    {
        double height = 0;
        foreach (var (winding, coil) in order.Zip(coils))
        {
            var section = coil.Amps / density;
            coil.Wire = WireSize.Nearest(section);
            coil.Strands = coil.Wire.BareMillimetres > StiffMillimetres ? 2 : 1;
            coil.Wire = coil.Strands == 2 ? WireSize.Nearest(section / 2) : coil.Wire;
            (coil.Layers, coil.Build) = Former.Lay(core.Lamination, coil.Turns.Sum(), coil.Wire, coil.Strands, winding.IsPrimary);
            coil.MeanTurn = Former.Turn(core, height + (coil.Build / 2));
            height += coil.Build;
            var metres = coil.Turns.Sum() * coil.MeanTurn * 1e-3;
            coil.ColdOhms = Copper.Ohms(metres, coil.Strands * coil.Wire.SquareMillimetres);
        }
    }

    private void Warm()
    {
        ironWatts = limits.Steel.Watts(core, Tesla, need.Hertz);
        foreach (var coil in coils)
        {
            coil.HotOhms = coil.ColdOhms * Copper.Hotter(limits.Ambient + rise);
        }

        // Copper that heats itself faster than it can give off ends here: such a design fails its class anyway.
        rise = Math.Min((rise + HeatBalance.Rise(core, ironWatts + CopperWatts(), limits.Ambient)) / 2, 400);
    }

    private WoundDesign Design()
    {
        WoundWinding[] windings = [.. order.Zip(coils, Wound)];
        var fill = coils.Sum(c => c.Build) / Former.Room(core.Lamination);
        var high = Tesla * need.HighMains;
        var loss = ironWatts / PrimaryVolts;
        var across = Magnetising(windings.Where(w => w.Need.IsPrimary).Sum(w => w.Turns));
        var offLoad = Math.Sqrt((across * across) + (loss * loss));
        var checks = DesignChecks.Of(windings, fill, high, limits.Ambient + rise, limits);
        return new WoundDesign(core, limits.Steel, need.Hertz, windings, Tesla, high, ironWatts, offLoad, fill, rise, checks);
    }

    private WoundWinding Wound(WindingNeed w, Coil c)
    {
        var (primary, turns) = (coils[0], c.Turns.Sum());
        var perTurnFree = order[0].Volts / primary.Turns.Sum();
        var perTurn = (order[0].Volts - (primary.SagAmps * primary.HotOhms)) / primary.Turns.Sum();
        var free = w.IsPrimary ? w.Volts : turns * perTurnFree;
        var loaded = w.IsPrimary ? w.Volts : (turns * perTurn) - (c.SagAmps * c.HotOhms);
        return new(w, c.Turns, c.Wire, c.Strands, c.Amps, c.Layers, c.Build, c.MeanTurn, c.ColdOhms, c.HotOhms, free, loaded);
    }
}
