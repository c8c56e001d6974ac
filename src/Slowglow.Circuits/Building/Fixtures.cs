using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Building;

/// <summary>What the bench connects to the unit: mains, generators, loads, and the stiff rails used while a signal is followed.</summary>
internal sealed class Fixtures
{
    /// <summary>Resistance of the mains at the outlet, ohms (common practice, no source).</summary>
    public const double MainsOhms = 0.4;

    /// <summary>Siemens that hold a rectified rail at its mean while a signal is followed.</summary>
    public const double HoldSiemens = 1e3;

    /// <summary>
    /// Holds the unplugged mains side: beyond any ohmmeter, yet tight enough that ohms within it do not drown in those to chassis.
    /// </summary>
    private const double IslandSiemens = 2e-9;
    private const double SmallestReservoir = 0.9e-6;
    private readonly List<(int Slot, double Siemens)> whenOn = [];
    private int mainsSlot = -1;
    private int swingSlot = -1;

    /// <summary>Rows of live and neutral; -1 when the sheet does not use them.</summary>
    public int LiveRow { get; private set; } = -1;
    public int NeutralRow { get; private set; } = -1;

    /// <summary>Generator and load of every signal path, in the sheet's order.</summary>
    public List<PathFixture> Paths { get; } = [];

    /// <summary>Rectified nets: row and the slots of siemens and volts that can hold it.</summary>
    public List<(int Row, int Siemens, int Volts)> Holds { get; } = [];

    /// <summary>Rows of rectified nets with a capacitor of 0.9 uF or more on them (smaller ones decouple: common practice, no source).</summary>
    public IReadOnlyList<int> Reservoirs { get; private set; } = [];

    public bool HasMains => mainsSlot >= 0;

    /// <summary>One signal path's connections.</summary>
    internal sealed record PathFixture(
        SignalPath Path,
        int In,
        int Out,
        int SourceBranch,
        int SourceSlot,
        int SourceSwing,
        int LoadSlot,
        int ShortSlot
    );

    public static Fixtures Lay(CircuitBuilder builder)
    {
        var fixtures = new Fixtures();
        fixtures.LayMains(builder);
        foreach (var path in builder.Sheet.Signals)
        {
            fixtures.LayPath(builder, path);
        }

        foreach (var net in RectifiedNets.Of(builder.Sheet))
        {
            var row = builder.Row(net);
            var siemens = builder.Equations.NewSlot(CircuitBuilder.OpenSiemens);
            var volts = builder.Equations.NewSlot(0);
            builder.Equations.AddBranch(BranchKind.Conductance, row, -1, siemens, volts);
            fixtures.Holds.Add((row, siemens, volts));
        }

        fixtures.Reservoirs =
        [
            .. RectifiedNets
                .Of(builder.Sheet)
                .Where(net =>
                    builder
                        .Sheet.Parts.OfType<CapacitorPart>()
                        .Any(c => c.Farads >= SmallestReservoir && c.Pins.Any(p => p.Net == net))
                )
                .Select(builder.Row),
        ];

        return fixtures;
    }

    private void LayMains(CircuitBuilder builder)
    {
        if (builder.Rows.TryGetValue(NetTable.Earth, out var earth))
        {
            builder.Conductance(earth, -1, CircuitBuilder.WireSiemens);
        }

        if (!builder.Rows.ContainsKey(NetTable.Live) || !builder.Rows.ContainsKey(NetTable.Neutral))
        {
            return;
        }

        LiveRow = builder.Row(NetTable.Live);
        NeutralRow = builder.Row(NetTable.Neutral);
        mainsSlot = builder.Equations.NewSlot(1 / MainsOhms);
        swingSlot = builder.Equations.NewSlot(Math.Sqrt(2) * builder.Sheet.Mains.Volts);
        MainsBranch = builder.Equations.AddBranch(BranchKind.Conductance, LiveRow, NeutralRow, mainsSlot, -1, swingSlot);
        whenOn.Add((builder.Conductance(NeutralRow, -1, CircuitBuilder.WireSiemens), CircuitBuilder.WireSiemens));
        builder.Vary(
            "mains",
            "mains volts",
            builder.Sheet.Mains.Tolerance / 2,
            new SlotChange(swingSlot, builder.Sheet.Mains.Tolerance / 2)
        );
    }

    private void LayPath(CircuitBuilder builder, SignalPath path)
    {
        var input = builder.Row(path.In);
        var output = builder.Row(path.Out);
        var source = builder.Equations.NewSlot(CircuitBuilder.OpenSiemens);
        var swing = builder.Equations.NewSlot(0);
        var branch = builder.Equations.AddBranch(BranchKind.Conductance, input, -1, source, -1, swing);
        var load = builder.Conductance(output, -1, CircuitBuilder.OpenSiemens);
        var shorting = builder.Conductance(input, -1, CircuitBuilder.OpenSiemens);
        Paths.Add(new PathFixture(path, input, output, branch, source, swing, load, shorting));
    }

    /// <summary>Sets mains and standing load as the setup has them.</summary>
    public void Stand(Setup setup, Sheet sheet, double[] slots)
    {
        if (HasMains)
        {
            var on = !setup.PowerOff;
            slots[mainsSlot] = on ? 1 / MainsOhms : CircuitBuilder.OpenSiemens;
            slots[swingSlot] = on ? Math.Sqrt(2) * (setup.MainsVolts ?? sheet.Mains.Volts) : 0;
            foreach (var (slot, siemens) in whenOn)
            {
                slots[slot] = on ? siemens : IslandSiemens;
            }
        }

        foreach (var plugged in Paths.Where(p => setup.Channel is null || p.Path.Name == setup.Channel))
        {
            Plug(plugged, setup.Input, slots);
        }

        if (setup.LoadOhms is { } load && double.IsFinite(load) && PathOf(setup.Channel) is { } path)
        {
            slots[path.LoadSlot] = 1 / load;
        }
    }

    private static void Plug(PathFixture path, InputState input, double[] slots)
    {
        switch (input)
        {
            case InputState.Shorted:
                slots[path.ShortSlot] = CircuitBuilder.WireSiemens;
                break;
            case InputState.Driven:
                Connect(path, 0, slots, false);
                break;
        }
    }

    /// <summary>The path of that name, or the first; null when the sheet has none.</summary>
    public PathFixture? PathOf(string? channel) =>
        channel is null ? Paths.FirstOrDefault() : Paths.FirstOrDefault(p => p.Path.Name == channel);

    /// <summary>The outlet among the branches of the equations; -1 for none.</summary>
    public int MainsBranch { get; private set; } = -1;

    /// <summary>Siemens between the outlet and the unit's inlet.</summary>
    public double MainsSiemens(double[] slots) => slots[mainsSlot];

    /// <summary>Puts a limiter lamp of that many ohms in the mains lead.</summary>
    public void SetLimiter(double ohms, double[] slots) => slots[mainsSlot] = 1 / (MainsOhms + ohms);

    /// <summary>What <see cref="SetLimiter"/> has set.</summary>
    public double LimiterOhms(double[] slots) => (1 / slots[mainsSlot]) - MainsOhms;

    /// <summary>Connects a path's generator and, unless told otherwise, its load.</summary>
    public static void Connect(PathFixture path, double crestVolts, double[] slots, bool withLoad = true)
    {
        slots[path.SourceSlot] = 1 / Math.Max(path.Path.SourceOhms, 1);
        slots[path.SourceSwing] = crestVolts;
        if (
            withLoad
            && double.IsFinite(path.Path.LoadOhms)
            && path.Path.LoadOhms > 0
            && slots[path.LoadSlot] <= CircuitBuilder.OpenSiemens
        )
        {
            slots[path.LoadSlot] = 1 / path.Path.LoadOhms;
        }
    }

    /// <summary>Takes the mains' swing away and holds the rectified rails where they stand.</summary>
    public void HoldRails(double[] mean, double[] slots)
    {
        StopMains(slots);
        foreach (var (row, siemens, volts) in Holds)
        {
            slots[siemens] = HoldSiemens;
            slots[volts] = mean[row];
        }
    }

    /// <summary>What each held rail is given to stay where it is held, amperes in the order of <see cref="Holds"/>: what the unit draws from it.</summary>
    public double[] Delivered(double[] mean, double[] slots) =>
        [.. Holds.Select(h => HoldSiemens * (slots[h.Volts] - mean[h.Row]))];

    /// <summary>Takes the mains' swing away.</summary>
    public void StopMains(double[] slots)
    {
        if (HasMains)
        {
            slots[swingSlot] = 0;
        }
    }

    /// <summary>Mains crest volts standing in the slots.</summary>
    public double MainsSwing(double[] slots) => HasMains ? slots[swingSlot] : 0;
}
