namespace Slowglow.Sheets;

/// <summary>All nets of a sheet, with every name each is known by (net word or PART.PIN).</summary>
public sealed class NetTable
{
    /// <summary>Chassis, the reference.</summary>
    public const string Ground = "GND";
    public const string Live = "MAINS.L";
    public const string Neutral = "MAINS.N";
    public const string Earth = "MAINS.E";

    private readonly Dictionary<string, string> canonical;

    /// <param name="nets">Canonical names, in the order of first mention.</param>
    /// <param name="canonical">Every known name (case-sensitive) to its canonical name.</param>
    public NetTable(IReadOnlyList<string> nets, Dictionary<string, string> canonical)
    {
        Names = nets;
        this.canonical = canonical;
    }

    /// <summary>Canonical names: a plain word where the drawing has one, otherwise the first PIN named.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>Canonical net for a net word or PART.PIN (by number or electrode), or null.</summary>
    public string? Find(string name) => canonical.GetValueOrDefault(name);

    /// <summary>Every name that leads to the net, its canonical name first.</summary>
    public IEnumerable<string> NamesOf(string net) =>
        canonical.Where(p => p.Value == net).Select(p => p.Key).OrderBy(n => n == net ? 0 : 1);
}
