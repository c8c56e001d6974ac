using System.Globalization;
using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.OpAmp;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Op-amps that saturate a little short of their rails and draw their output current from them.</summary>
internal sealed class OpAmpCards : PartCards
{
    /// <summary>Rounding of the swing where the supply is too low, volts.</summary>
    private const double Soft = 0.05;
    private const double LagSeconds = 1e-6;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not OpAmpPart amp)
        {
            return false;
        }

        foreach (var (section, node) in Sections(deck, part, amp.Device))
        {
            WriteSection(deck, amp, section, node, faults);
        }

        return true;
    }

    private static void WriteSection(Deck deck, OpAmpPart amp, int section, Func<string, string> node, FaultsOf faults)
    {
        var law = amp.Device;
        var name = FormattableString.Invariant($"{amp.Designator}s{section}");
        var (plus, minus, output, high, low) = (node("in+"), node("in-"), node("out"), node("v+"), node("v-"));
        var number = section.ToString(CultureInfo.InvariantCulture);
        var left = FormattableString.Invariant($"(v({high},{low})-{law["roomHigh"] + law["roomLow"]:R})/2/{Soft:R}");
        var half = FormattableString.Invariant($"({Soft:R}*{Expression.Softplus(left)}+1e-3)");
        var drive = FormattableString.Invariant($"tanh({law["gain"]:R}*v({plus},{minus})/{half})");
        var awake = $"tanh(max(v({high},{low}),0)/3)";
        drive = faults.Has(FailureMode.StuckHigh, number) ? "1" : drive;
        drive = faults.Has(FailureMode.StuckLow, number) ? "(-1)" : drive;
        var dead = faults.Has(FailureMode.Dead, number) || faults.Has(FailureMode.Dead);
        var ohms = dead ? 1e9 : law["rout"];
        var (standing, bias) = dead ? (0, 0) : (law["iq"], law["ib"]);
        var inner = deck.Inner(amp.Designator, "out" + number);

        // Without any delay the library's Newton cycles; a microsecond of lag lets its step control help and changes nothing at 100 Hz.
        var lag = deck.Inner(amp.Designator, "lag" + number);
        deck.Current(name, "0", lag, FormattableString.Invariant($"1e-3*({half}*{drive}-v({lag}))"));
        deck.Capacitor(name, lag, "0", 1e-3 * LagSeconds);
        deck.Volts(name + "o", inner, "0", FormattableString.Invariant($"v({low})+{law["roomLow"]:R}+{half}+v({lag})"));
        var limit = law.Limits.GetValueOrDefault("amps", 0.025);
        var straight = FormattableString.Invariant($"v({inner},{output})/{ohms:R}");
        var amps = FormattableString.Invariant($"({straight}*pow(1+pow(abs({straight})/{limit:R},4),-0.25))");
        deck.Current(name + "out", inner, output, amps);
        deck.Current(name + "h", high, "0", FormattableString.Invariant($"{standing:R}*{awake}+max({amps},0)"));
        deck.Current(name + "l", "0", low, FormattableString.Invariant($"{standing:R}*{awake}-min({amps},0)"));
        deck.Current(name + "p", plus, "0", FormattableString.Invariant($"{bias:R}*{awake}"));
        deck.Current(name + "n", minus, "0", FormattableString.Invariant($"{bias:R}*{awake}"));
    }
}
