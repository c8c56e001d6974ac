namespace Slowglow.Workshop.Timeline;

/// <summary>How people spoke with each other.</summary>
public enum Way
{
    Telephone,
    Mail,
    Message,
    Counter,
    Letter,
}
