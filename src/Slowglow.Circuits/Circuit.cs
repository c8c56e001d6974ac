using Slowglow.Sheets;

namespace Slowglow.Circuits;

/// <summary>The checked meaning of a sheet, ready to be solved. Immutable and safe to share between threads.</summary>
public sealed class Circuit
{
    public Sheet Sheet { get; }

    /// <summary>Everything that varies between specimens; independent of each other.</summary>
    public IReadOnlyList<RandomParameter> Parameters { get; }

    /// <summary>Every single fault that the models can compute, with a grid of severities for the soft ones.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    private Circuit(Sheet sheet, IReadOnlyList<RandomParameter> parameters, IReadOnlyList<Fault> faults)
    {
        Sheet = sheet;
        Parameters = parameters;
        Faults = faults;
    }

    /// <summary>
    /// Builds the circuit and checks it: missing ground, floating nets, a loop of sources, a valve without a cathode return, and so on,
    /// each named. Null value when an error makes it unsolvable.
    /// </summary>
    public static Parsed<Circuit> From(Sheet sheet) => throw new NotSupportedException();
}
