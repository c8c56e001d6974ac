using Slowglow.Workshop.Photos;

namespace Slowglow.Web.Papers;

/// <summary>A photograph that was chosen and is not stored yet.</summary>
public sealed class ChosenPhoto(string name, PhotoKind kind, byte[] content)
{
    public string Name { get; } = name;

    public PhotoKind Kind { get; } = kind;

    public byte[] Content { get; } = content;

    public string Caption { get; set; } = "";
}
