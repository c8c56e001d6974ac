namespace Slowglow.Sheets.Yaml;

/// <summary>Bounds that no honest document reaches.</summary>
internal static class YamlLimits
{
    /// <summary>Characters.</summary>
    internal const int Size = 1_000_000;

    /// <summary>Levels of nesting.</summary>
    internal const int Depth = 24;

    /// <summary>Nodes, each alias counted with all that it repeats.</summary>
    internal const int Nodes = 100_000;

    /// <summary>Syntax mistakes after which reading stops.</summary>
    internal const int Mistakes = 60;
}
