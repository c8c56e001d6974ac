namespace Slowglow.Workshop.Units;

/// <summary>The thing on the bench.</summary>
/// <param name="Maker">As on the badge.</param>
/// <param name="Model">As on the front.</param>
/// <param name="Serial">Empty when there is none to read.</param>
/// <param name="MainsVolts">Volts rms that it is strapped for; above 0.</param>
public sealed record UnitOnBench(string Maker, string Model, string Serial, double MainsVolts)
{
    /// <summary>Maker and model, as one says it.</summary>
    public string Title => Maker.Length == 0 ? Model : $"{Maker} {Model}";
}
