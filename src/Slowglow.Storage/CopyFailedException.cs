namespace Slowglow.Storage;

/// <summary>A copy could not be made, or is not whole. The message is for a technician.</summary>
public sealed class CopyFailedException(string message, Exception? cause = null) : Exception(message, cause);
