namespace Slowglow.Web.Supply;

/// <summary>What is typed of one offer.</summary>
public sealed class OfferFields
{
    public string Name { get; set; } = "";
    public string Windings { get; set; } = "";
    public string Price { get; set; } = "";
    public string Freight { get; set; } = "";
    public string Tax { get; set; } = "";
    public string Weeks { get; set; } = "";
    public string Fixing { get; set; } = "";
    public string Size { get; set; } = "";
    public string Holes { get; set; } = "";

    public bool IsEmpty => All.All(f => f.Text.Trim().Length == 0);

    /// <summary>As a command would have it, on one line.</summary>
    public string Line =>
        $"{One(Name)}: {string.Join("; ", All.Skip(1).Where(f => f.Text.Trim().Length > 0).Select(f => $"{f.Key} {One(f.Text)}".Trim()))}";

    private (string Key, string Text)[] All =>
        [
            ("", Name),
            ("", Windings),
            ("price", Price),
            ("freight", Freight),
            ("tax", Tax),
            ("weeks", Weeks),
            ("fixing", Fixing.Replace(';', ',')),
            ("size", Size),
            ("holes", Holes),
        ];

    private static string One(string text) => text.Trim().ReplaceLineEndings(" ");
}
