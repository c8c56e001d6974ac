namespace Slowglow.Sheets;

/// <summary>How much a finding matters. Only an error stops the document from being used.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}
