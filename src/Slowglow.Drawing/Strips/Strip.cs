using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Wiring;

namespace Slowglow.Drawing.Strips;

/// <summary>A strip laid out and wired.</summary>
internal sealed record Strip(bool IsSupply, Wired Wired)
{
    public Rect Outline =>
        Wired
            .Placed.Select(p => p.Outline)
            .Concat(Wired.Runs.Select(r => Rect.Around([.. r.Corners])))
            .Concat(Wired.Rails.Select(r => r.NameRoom))
            .Concat(Wired.Tags.SelectMany(t => t.Room))
            .Aggregate((a, b) => a.With(b));

    public Strip Moved(Cell by) =>
        this with
        {
            Wired = Wired with
            {
                Placed = [.. Wired.Placed.Select(p => p.Moved(by))],
                Runs = [.. Wired.Runs.Select(r => r.Moved(by))],
                Rails = [.. Wired.Rails.Select(r => r.Moved(by))],
                Tags = [.. Wired.Tags.Select(t => t.Moved(by))],
            },
        };
}
