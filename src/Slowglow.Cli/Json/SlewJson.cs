using Slowglow.Circuits;

namespace Slowglow.Cli.Json;

/// <summary>Frequency (hertz) up to which the clean output is there whole, and the op-amp that slews beyond it.</summary>
internal sealed record SlewJson(string Part, string Element, double Frequency, double Input, double Level)
{
    public static SlewJson? From(SlewLimit? s) =>
        s is null ? null : new(s.Part, s.Element, s.Hertz, s.GeneratorVolts, s.OutputVolts);
}
