namespace Slowglow.Drawing.Grid;

/// <summary>Arithmetic of headings.</summary>
internal static class Headings
{
    public static readonly Heading[] All = [Heading.Up, Heading.Right, Heading.Down, Heading.Left];

    public static Cell Step(this Heading heading) =>
        heading switch
        {
            Heading.Up => new(0, -1),
            Heading.Right => new(1, 0),
            Heading.Down => new(0, 1),
            _ => new(-1, 0),
        };

    public static bool IsLevel(this Heading heading) => heading is Heading.Left or Heading.Right;

    public static Heading Opposite(this Heading heading) => (Heading)(((int)heading + 2) % 4);
}
