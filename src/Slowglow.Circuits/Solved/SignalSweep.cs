using System.Numerics;
using Slowglow.Circuits.Building;
using Slowglow.Sheets.Parts.Loudspeaker;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Small signals in one world at one frequency after another, with the bench connected as a question needs it.</summary>
internal sealed class SignalSweep
{
    private const double NothingOhms = 1e12;
    private readonly AskedWorld asked;
    private readonly double[] slots;

    public SignalSweep(AskedWorld asked, Fixtures.PathFixture? path)
    {
        this.asked = asked;
        Path = path;
        slots = (double[])asked.State.Slots.Clone();
        if (path is not null)
        {
            Fixtures.Connect(path, 0, slots);
        }

        Signal = new SmallSignalSolver(asked.Circuit.Equations);
    }

    public Fixtures.PathFixture? Path { get; }
    public SmallSignalSolver Signal { get; }

    /// <summary>Hertz of the last <see cref="At"/>.</summary>
    public double Hertz { get; private set; }
    public ReadOnlySpan<double> Slots => slots;

    /// <summary>Takes the generator off the input.</summary>
    public SignalSweep WithoutGenerator()
    {
        slots[Path!.SourceSlot] = CircuitBuilder.OpenSiemens;
        return this;
    }

    /// <summary>Takes the load off the output, and any loudspeaker that stands on it.</summary>
    public SignalSweep WithoutLoad()
    {
        slots[Path!.LoadSlot] = CircuitBuilder.OpenSiemens;
        foreach (var speaker in asked.Circuit.Sheet.Parts.OfType<LoudspeakerPart>().Where(OnOutput))
        {
            foreach (var b in asked.Parts.BranchesOf(speaker.Designator))
            {
                var branch = asked.Circuit.Equations.Branches[b];
                slots[branch.Slot] = branch.Kind switch
                {
                    BranchKind.Flow => NothingOhms,
                    BranchKind.Storage => 0,
                    _ => CircuitBuilder.OpenSiemens,
                };
            }
        }

        return this;
    }

    private bool OnOutput(LoudspeakerPart speaker) =>
        speaker.Pins.Any(p =>
            asked.Circuit.Rows.TryGetValue(p.Net, out var row)
            && row >= 0
            && (row == Path!.Out || Math.Abs(asked.State.OhmsBetween(row, Path.Out)) < 0.1)
        );

    /// <summary>Holds the rectified rails stiffly.</summary>
    public SignalSweep WithRailsHeld()
    {
        asked.Circuit.Fixtures.HoldRails(asked.State.Mean, slots);
        return this;
    }

    public SignalSweep At(double hertz)
    {
        Hertz = hertz;
        Signal.Prepare(slots, asked.State.Mean, hertz);
        return this;
    }

    /// <summary>Response of every unknown to one volt of the generator.</summary>
    public Complex[] Driven() => Signal.Respond(Path!.SourceBranch);

    /// <summary>Response of every unknown to one ampere into the net that a conductance branch to ground stands on.</summary>
    public Complex[] Pushed(int branch)
    {
        var siemens = slots[asked.Circuit.Equations.Branches[branch].Slot];
        return [.. Signal.Respond(branch).Select(v => v / siemens)];
    }
}
