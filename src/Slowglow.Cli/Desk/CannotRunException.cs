namespace Slowglow.Cli.Desk;

/// <summary>The command cannot do its work for a reason the technician can mend; the message is written for them.</summary>
internal sealed class CannotRunException(string message) : Exception(message);
