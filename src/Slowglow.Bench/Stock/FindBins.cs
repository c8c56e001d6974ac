using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Questions;
using Slowglow.Power.Stress;
using Slowglow.Quantities;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Storage;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Stock;

/// <summary>Bins whose resistors or capacitors would do in the place of a part: of its value, and rated for what it stands at the worst.</summary>
public sealed class FindBins(IDbContextFactory<ShopDatabase> shop)
{
    /// <summary>Values this near to each other are the same one, fraction.</summary>
    private const double Same = 0.01;

    /// <summary>With pieces in them, by name; none for other kinds of part, or where nothing is known of what the part stands.</summary>
    public async Task<FittingBins> RunAsync(Part part, UnitStress stress, CancellationToken cancel = default)
    {
        var row = stress.Rows.FirstOrDefault(r => r.Part == part.Designator && r.What == What(part));
        if (row is null || !double.IsFinite(row.Needed))
        {
            return new(row, []);
        }

        await using var database = await shop.CreateDbContextAsync(cancel);
        var items = await database.Stock.AsNoTracking().Where(i => i.OnHand > 0).OrderBy(i => i.Part).ToListAsync(cancel);
        return new(row, [.. items.Where(i => Does(BinPart.Read(i.Part), part, row.Needed))]);
    }

    private static bool Does(BinPart? bin, Part part, double needed) =>
        (bin, part) switch
        {
            ({ Value.Unit: Unit.Ohm }, ResistorPart r) => Is(bin.Value.Value, r.Ohms) && bin.Watts >= needed,
            ({ Value.Unit: Unit.Farad }, CapacitorPart c) => Is(bin.Value.Value, c.Farads) && bin.Volts >= needed,
            _ => false,
        };

    private static bool Is(double value, double wanted) => Math.Abs(value - wanted) <= Same * wanted;

    private static string What(Part part) => part is CapacitorPart ? "volts" : "heat";
}
