namespace Slowglow.Tests.Devices.Agreement;

/// <summary>One published figure beside the computed one.</summary>
/// <param name="Valve">Type number as in the source.</param>
/// <param name="Table">File under tests/reference.</param>
/// <param name="Conditions">Under what it was measured.</param>
/// <param name="Quantity">What, with its unit.</param>
/// <param name="Published">The source's figure.</param>
/// <param name="Computed">The program's.</param>
/// <param name="Fitted">"yes", "in part" (every other row of that table), "no".</param>
/// <param name="Source">Maker, title, year, page.</param>
internal sealed record AgreementRow(
    string Valve,
    string Table,
    string Conditions,
    string Quantity,
    double Published,
    double Computed,
    string Fitted,
    string Source
)
{
    /// <summary>Computed over published, less one.</summary>
    public double Error => (Computed / Published) - 1;

    /// <summary>What the row is, whatever it computes to.</summary>
    public string Key => $"{Valve} | {Quantity} | {Conditions} | {Source}";
}
