using Slowglow.Sheets;

namespace Slowglow.Cli.Desk;

/// <summary>A finding and the document it is about (a path, or "command line").</summary>
internal sealed record DocumentFinding(string Document, Finding Finding);
