namespace Slowglow.Sheets.Yaml;

/// <summary>The document passes a bound; caught where the document is read.</summary>
internal sealed class TooMuchException(string what) : Exception(what);
