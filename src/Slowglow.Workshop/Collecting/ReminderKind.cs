namespace Slowglow.Workshop.Collecting;

/// <summary>Whom somebody has to remind.</summary>
public enum ReminderKind
{
    /// <summary>The customer: it stands ready.</summary>
    Collect,

    /// <summary>A supplier: the day is past, or none was ever named.</summary>
    Chase,
}
