using System.Globalization;
using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.OpAmp;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Op-amps that saturate a little short of their rails and draw their output current from them.</summary>
internal sealed class OpAmpCards : PartCards
{
    /// <summary>Rounding of the swing where the supply is too low, volts, and of the change-over between the rails, amperes.</summary>
    private const double Soft = 0.05;
    private const double CrossoverAmps = 1e-5;

    /// <summary>Without any delay the library's Newton cycles; a microsecond of lag lets its step control help and changes nothing at 1 kHz.</summary>
    private const double LagSeconds = 1e-6;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not OpAmpPart amp)
        {
            return false;
        }

        foreach (var (section, node) in Sections(deck, part, amp.Device))
        {
            WriteSection(deck, amp, section, node, faults, bench.Run == ReferenceRun.SmallSignal);
        }

        return true;
    }

    private static void WriteSection(
        Deck deck,
        OpAmpPart amp,
        int section,
        Func<string, string> node,
        FaultsOf faults,
        bool ownPole
    )
    {
        var law = amp.Device;
        var name = FormattableString.Invariant($"{amp.Designator}s{section}");
        var (plus, minus, high, low) = (node("in+"), node("in-"), node("v+"), node("v-"));
        var number = section.ToString(CultureInfo.InvariantCulture);
        var left = FormattableString.Invariant($"(v({high},{low})-{law["roomHigh"] + law["roomLow"]:R})/2/{Soft:R}");
        var half = FormattableString.Invariant($"({Soft:R}*{Expression.Softplus(left)}+1e-3)");
        var awake = Expression.TanhOfCube($"(max(v({high},{low}),0)/2.5)");
        var drive = FormattableString.Invariant($"tanh({law["gain"]:R}*{awake}*v({plus},{minus})/{half})");
        drive = faults.Has(FailureMode.StuckHigh, number) || faults.Has(FailureMode.StuckHigh) ? "1" : drive;
        drive = faults.Has(FailureMode.StuckLow, number) || faults.Has(FailureMode.StuckLow) ? "(-1)" : drive;
        var dead = faults.Has(FailureMode.Dead, number) || faults.Has(FailureMode.Dead);

        var lag = deck.Inner(amp.Designator, "lag" + number);
        var seconds = ownPole ? law["gain"] / (2 * Math.PI * law["gbw"]) : LagSeconds;
        deck.Current(name, "0", lag, FormattableString.Invariant($"1e-3*({half}*{drive}-v({lag}))"));
        deck.Capacitor(name, lag, "0", 1e-3 * seconds);
        var inner = deck.Inner(amp.Designator, "out" + number);
        var skew = (law["roomLow"] - law["roomHigh"]) / 2;
        var output = node("out");
        deck.Guess(inner, v => v(output));
        deck.Guess(lag, v => v(output) - ((v(low) + v(high)) / 2) - skew);
        deck.Volts(name + "o", inner, "0", FormattableString.Invariant($"v({low})+v({high},{low})/2+{skew:R}*{awake}+v({lag})"));
        WriteCurrents(deck, amp, name, node, inner, awake, dead);
    }

    /// <summary>What the output gives comes in at v+, what it takes leaves at v-; the inputs' bias leaves at v- too.</summary>
    private static void WriteCurrents(
        Deck deck,
        OpAmpPart amp,
        string name,
        Func<string, string> node,
        string inner,
        string awake,
        bool dead
    )
    {
        var law = amp.Device;
        var (output, high, low) = (node("out"), node("v+"), node("v-"));
        var ohms = dead ? 1e9 : law["rout"];
        var (standing, bias) = dead ? (0, 0) : (law["iq"], law["ib"]);
        var limit = law.Limits.GetValueOrDefault("amps", 0.025);
        var straight = FormattableString.Invariant($"(v({inner},{output})*{awake}/{ohms:R})");
        var amps = FormattableString.Invariant($"({straight}*pow(1+pow(abs({straight})/{limit:R},4),-0.25))");
        var given = FormattableString.Invariant($"{CrossoverAmps:R}*{Expression.Softplus($"{amps}/{CrossoverAmps:R}")}");
        deck.Current(name + "out", low, output, amps);
        deck.Current(name + "h", high, low, FormattableString.Invariant($"({standing:R}+{given})*{awake}"));
        deck.Current(name + "p", node("in+"), low, FormattableString.Invariant($"{bias:R}*{awake}"));
        deck.Current(name + "n", node("in-"), low, FormattableString.Invariant($"{bias:R}*{awake}"));
    }
}
