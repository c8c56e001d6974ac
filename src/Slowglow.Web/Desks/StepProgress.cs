namespace Slowglow.Web.Desks;

/// <summary>Progress told at once, on the thread that made it.</summary>
internal sealed class StepProgress(Action<double> tell) : IProgress<double>
{
    public void Report(double value) => tell(value);
}
