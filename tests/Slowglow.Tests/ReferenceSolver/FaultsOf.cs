using Slowglow.Circuits;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>What is wrong with one part.</summary>
internal sealed class FaultsOf(string part, IReadOnlyList<Fault> faults)
{
    private readonly Fault[] mine = [.. faults.Where(f => f.Part == part)];

    public IReadOnlyList<Fault> All => mine;

    public bool Any => mine.Length > 0;

    public bool Has(FailureMode mode, string where = "") => mine.Any(f => f.Mode == mode && f.Where == where);

    /// <summary>Severity of that fault, or the figure of a good part.</summary>
    public double Severity(FailureMode mode, double good, string where = "") =>
        mine.FirstOrDefault(f => f.Mode == mode && f.Where == where)?.Severity ?? good;
}
