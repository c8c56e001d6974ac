using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Formations;

/// <summary>A symbol at its place in a formation.</summary>
internal sealed record Member(Symbol Symbol, Pose Pose, Cell Origin)
{
    public Cell PinAt(int pin) => Origin + Pose.Apply(Symbol.Pins[pin].At);

    public Member Moved(Cell by) => this with { Origin = Origin + by };
}
