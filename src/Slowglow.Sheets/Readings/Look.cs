namespace Slowglow.Sheets.Readings;

/// <summary>What eyes, nose and fingers say of a part.</summary>
public enum Look
{
    /// <summary>Scorched, browned, smoking, or smelling of it.</summary>
    Burnt,

    /// <summary>Hotter than such a part should be.</summary>
    Hot,

    /// <summary>Cool where one would expect warmth.</summary>
    Cool,

    /// <summary>A heater or lamp that glows.</summary>
    Lit,

    /// <summary>A heater or lamp that does not.</summary>
    Dark,

    /// <summary>A red-hot anode.</summary>
    AnodeRed,

    /// <summary>A domed or swollen can.</summary>
    Bulged,

    /// <summary>Electrolyte, wax or oil has come out.</summary>
    Leaking,

    /// <summary>Cracked, split or chipped.</summary>
    Cracked,

    /// <summary>A dry joint, a loose or corroded pin.</summary>
    Loose,

    /// <summary>Sparks or flashes over.</summary>
    Arcing,

    /// <summary>Nothing to be seen.</summary>
    Fine,
}
