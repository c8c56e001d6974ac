using Slowglow.Workshop.Photos;

namespace Slowglow.Storage.Records;

/// <summary>A photograph, kept by what is in it: the same picture is kept once. Never changed.</summary>
public sealed class KeptPhoto
{
    /// <summary>SHA-256 of its content in hexadecimal, with the ending of its kind.</summary>
    public required string File { get; init; }

    public required PhotoKind Kind { get; init; }

    public required byte[] Content { get; init; }

    /// <summary>When it was stored first.</summary>
    public required DateTimeOffset At { get; init; }
}
