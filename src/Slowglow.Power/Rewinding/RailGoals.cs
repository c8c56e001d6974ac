using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Rewinding;

/// <summary>
/// Which rail tells most of each secondary: every winding in turn is given a little more, and the world says what moves. A winding
/// that moves no rail is judged by its own volts.
/// </summary>
internal sealed class RailGoals
{
    private const double Nudge = 0.03;

    /// <summary>A rail belongs to a winding when it moves at least by this share of the winding's own move (common practice, no source).</summary>
    private const double Least = 0.3;

    private readonly List<(Winding Winding, string? Net, double Asked)> goals = [];

    /// <summary>Null when the circuit does not settle.</summary>
    public static RailGoals? Of(Sheet sheet, TransformerInCircuit now, IReadOnlyList<string> rails, CancellationToken cancel)
    {
        var found = new RailGoals();
        var asked = now.Dc(rails, cancel);
        foreach (var winding in now.Part.Windings.Where(w => !w.IsPrimary))
        {
            var more = now.Part with { Windings = [.. now.Part.Windings.Select(w => w == winding ? Raised(w) : w)] };
            var moved = TransformerInCircuit.With(sheet, more)?.Dc(rails, cancel);
            if (moved is null)
            {
                return null;
            }

            var shares = asked
                .Zip(moved, (a, m) => Math.Abs(a) > 1 && double.IsFinite(m) ? Math.Abs((m / a) - 1) / Nudge : 0)
                .ToArray();
            var best = shares.Length == 0 ? -1 : Array.FindIndex(shares, s => s >= Math.Max(Least, 0.9 * shares.Max()));
            found.goals.Add(best >= 0 ? (winding, rails[best], asked[best]) : (winding, null, now.Ac([winding], cancel)[0]));
        }

        return found.goals.TrueForAll(g => double.IsFinite(g.Asked) && g.Asked != 0) ? found : null;
    }

    private static Winding Raised(Winding w) => w with { SectionVolts = [.. w.SectionVolts.Select(v => v * (1 + Nudge))] };

    /// <summary>How a circuit with another transformer stands to the goals.</summary>
    public IReadOnlyList<RailCheck> Check(TransformerInCircuit changed, CancellationToken cancel) =>
        [
            .. goals.Select(g =>
            {
                var given = g.Net is null ? changed.Ac([g.Winding], cancel)[0] : changed.Dc([g.Net], cancel)[0];
                return new RailCheck(g.Winding.Name, g.Net ?? changed.PlaceOf(g.Winding), g.Net is null, g.Asked, given);
            }),
        ];
}
