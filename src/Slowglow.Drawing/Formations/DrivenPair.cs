using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Formations;

/// <summary>A column of two drivers and the column of the two output devices that they drive.</summary>
/// <param name="Drivers">From upper rail to lower.</param>
/// <param name="Between">What joins the drivers' emitters.</param>
/// <param name="UpperStopper">Between the upper driver and the upper output device; null when a wire is.</param>
internal sealed record DrivenPair(
    IReadOnlyList<Upright> Drivers,
    Upright Between,
    IReadOnlyList<Upright> Outputs,
    ResistorSymbol? UpperStopper,
    ResistorSymbol? LowerStopper
)
{
    public IEnumerable<Symbol> Symbols =>
        Drivers.Concat(Outputs).Select(u => u.Symbol).Concat(new Symbol?[] { UpperStopper, LowerStopper }.OfType<Symbol>());

    /// <summary>Null unless the one column drives the other, upper device by upper and lower by lower.</summary>
    public static DrivenPair? Of(
        IReadOnlyList<Upright> drivers,
        IReadOnlyList<Upright> outputs,
        IReadOnlyList<ResistorSymbol> resistors
    )
    {
        Upright[] drive = [.. drivers.Where(u => u.IsActive)];
        Upright[] output = [.. outputs.Where(u => u.IsActive)];
        if (drive.Length != 2 || output.Length != 2 || drivers.Intersect(outputs).Any())
        {
            return null;
        }

        var inner = drivers.SkipWhile(u => u != drive[0]).Skip(1).TakeWhile(u => u != drive[1]).ToArray();
        if (inner is not [var between])
        {
            return null;
        }

        var (upper, lower) = (Stopper(drive[0].Bottom, output[0]), Stopper(drive[1].Top, output[1]));
        return upper.Found && lower.Found ? new(drivers, between, outputs, upper.Symbol, lower.Symbol) : null;

        (bool Found, ResistorSymbol? Symbol) Stopper(string from, Upright to)
        {
            var symbol = resistors.FirstOrDefault(r => Joins(r, from, to.Control!));
            return (from == to.Control || symbol is not null, symbol);
        }
    }

    private static bool Joins(ResistorSymbol resistor, string a, string b) =>
        a != b && resistor.Pins.Any(p => p.Net == a) && resistor.Pins.Any(p => p.Net == b);
}
