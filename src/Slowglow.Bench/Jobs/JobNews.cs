namespace Slowglow.Bench.Jobs;

/// <summary>Tells everyone in this process that a job has a new timeline entry. Told after the entry is on the disk.</summary>
public sealed class JobNews
{
    /// <summary>Raised with the number of the job, on the thread that wrote.</summary>
    public event Action<int>? Changed;

    /// <summary>Raised when the shop's settings changed.</summary>
    public event Action? SettingsChanged;

    internal void Tell(int jobNumber) => Changed?.Invoke(jobNumber);

    internal void TellSettings() => SettingsChanged?.Invoke();
}
