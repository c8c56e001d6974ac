using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Regulator;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Three-terminal regulators with dropout and current limit.</summary>
internal sealed class RegulatorCards : PartCards
{
    /// <summary>Rounding of the corner between regulating and dropping out, volts, and of the cut-off, amperes.</summary>
    private const double Corner = 0.02;
    private const double SoftAmps = 1e-5;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not RegulatorPart regulator)
        {
            return false;
        }

        var law = regulator.Device;
        var sign = law["polarity"];
        var input = deck.Node(part.NetOf("in")!);
        var output = deck.Node(part.NetOf("out")!);
        var ground = deck.Node(part.NetOf("gnd") ?? part.NetOf("adj")!);
        deck.Resistor(
            part.Designator + "leak",
            output,
            ground,
            faults.All.Any(f => f.Mode == FailureMode.Short) ? ShortOhms : OpenOhms
        );
        if (faults.Has(FailureMode.Open) || faults.Has(FailureMode.Dead))
        {
            return true;
        }

        var volts = faults.Has(FailureMode.StuckHigh) ? 1e3 : law["volts"] * faults.Severity(FailureMode.Drifted, 1);
        var room = FormattableString.Invariant($"({sign:R}*v({input},{ground})-{law["dropout"]:R})");
        var aim = FormattableString.Invariant(
            $"({volts:R}+{room}-sqrt(({volts:R}-{room})*({volts:R}-{room})+{Corner * Corner:R}))/2"
        );
        var error = FormattableString.Invariant($"({aim}-{sign:R}*v({output},{ground}))/{law["rout"] * SoftAmps:R}");
        var soft = FormattableString.Invariant($"{SoftAmps / law["limit"]:R}*{Expression.Softplus(error)}");
        deck.Current(part.Designator + "o", input, output, FormattableString.Invariant($"{sign * law["limit"]:R}*tanh({soft})"));
        var awake = Expression.TanhOfCube(FormattableString.Invariant($"(max({sign:R}*v({input},{ground}),0)/3)"));
        deck.Current(part.Designator + "q", input, ground, FormattableString.Invariant($"{sign * law["iq"]:R}*{awake}"));
        return true;
    }
}
