using System.Globalization;
using Slowglow.Circuits;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Triodes and pentodes after Koren with grid current, rectifier valves by the three-halves law.</summary>
internal sealed class ValveCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not ValvePart valve || valve.Device.Kind == DeviceKind.GasRegulator)
        {
            return false;
        }

        var isRectifier = valve.Device.Kind == DeviceKind.RectifierValve;
        var pulled = bench.Setup.Pulled.Contains(part.Designator) || (bench.Setup.ValvesOut && !isRectifier);
        foreach (var (section, node) in Sections(deck, part, valve.Device))
        {
            var emission = pulled ? 0 : Emission(faults, section) * bench.Warmth.GetValueOrDefault(part.Designator, 1);
            var behind = Behind(deck, valve, section, node, faults);
            WriteSection(deck, valve, $"{part.Designator}s{section}", behind, emission, Gas(faults, section));
            WriteLeaks(deck, valve, section, node, faults);
            if (bench.Run == ReferenceRun.SmallSignal && !pulled)
            {
                WriteCapacitances(deck, valve.Device, $"{part.Designator}s{section}", node);
            }
        }

        HeaterCards.Write(deck, valve, pulled || faults.Has(FailureMode.Open, "heater"));
        return true;
    }

    /// <summary>Nodes of the electrodes themselves: a grid whose pin is off rests half a volt below its cathode, an anode at its cathode.</summary>
    private static Func<string, string> Behind(
        Deck deck,
        ValvePart valve,
        int section,
        Func<string, string> node,
        FaultsOf faults
    )
    {
        var name = FormattableString.Invariant($"{valve.Designator}s{section}");
        var inner = new Dictionary<string, string>();
        foreach (var (electrode, volts) in new[] { ("g", -0.5), ("a", 0.0) })
        {
            var places = new[] { electrode, FormattableString.Invariant($"{section} {electrode}") };
            if (places.Any(p => faults.Has(FailureMode.Open, p)))
            {
                inner[electrode] = deck.Inner(name, "off" + electrode);
                deck.Volts(name + "off" + electrode, inner[electrode], node("k"), FormattableString.Invariant($"{volts:R}"));
            }
        }

        return e => inner.GetValueOrDefault(e) ?? node(e);
    }

    /// <summary>Ions: this share of what the anode takes comes out of the grid.</summary>
    private static double Gas(FaultsOf faults, int section) =>
        faults.Severity(FailureMode.Gassy, faults.Severity(FailureMode.Gassy, 0, FormattableString.Invariant($"{section}")));

    private static void WriteAnode(Deck deck, string name, Func<string, string> node, double gas, string amps)
    {
        deck.Current(name + "a", node("a"), node("k"), amps);
        if (gas > 0)
        {
            deck.Current(name + "ions", node("k"), node("g"), FormattableString.Invariant($"{gas:R}*{amps}"));
        }
    }

    /// <summary>Picofarads that our solver gives to small signals alone.</summary>
    private static void WriteCapacitances(Deck deck, Device law, string name, Func<string, string> node)
    {
        foreach (var (constant, one, other) in new[] { ("cga", "g", "a"), ("cgk", "g", "k"), ("cak", "a", "k") })
        {
            if (law.Law.TryGetValue(constant, out var farads))
            {
                deck.Capacitor(name + constant, node(one), node(other), farads);
            }
        }
    }

    private static void WriteLeaks(Deck deck, ValvePart valve, int section, Func<string, string> node, FaultsOf faults)
    {
        string[] electrodes = valve.Device.Kind switch
        {
            DeviceKind.Triode => ["a", "g", "k"],
            DeviceKind.Pentode => ["a", "g", "g2", "k"],
            _ => ["a", "k"],
        };
        for (var a = 0; a < electrodes.Length; a++)
        {
            for (var b = a + 1; b < electrodes.Length; b++)
            {
                var pair = $"{electrodes[a]}-{electrodes[b]}";
                var named = FormattableString.Invariant($"{section} {pair}");
                var shorted = faults.Has(FailureMode.Short, pair) || faults.Has(FailureMode.Short, named);
                var leak = faults.Severity(FailureMode.Leaky, faults.Severity(FailureMode.Leaky, OpenOhms, named), pair);
                var name = FormattableString.Invariant($"{valve.Designator}s{section}{electrodes[a]}{electrodes[b]}");
                deck.Resistor(name, node(electrodes[a]), node(electrodes[b]), shorted ? ShortOhms : leak);
            }
        }

        WriteHeaterLeak(deck, valve, section, node, faults);
    }

    private static void WriteHeaterLeak(Deck deck, ValvePart valve, int section, Func<string, string> node, FaultsOf faults)
    {
        var heater = valve.Device.Pinout.FirstOrDefault(p => p.Electrode == "h");
        string[] places = ["h-k", FormattableString.Invariant($"{section} h-k")];
        var leak = places.Min(w =>
            faults.Has(FailureMode.Short, w) ? ShortOhms : faults.Severity(FailureMode.Leaky, OpenOhms, w)
        );
        if (heater is not null && leak < OpenOhms)
        {
            var end = deck.Node(valve.Pins.First(p => p.Number == heater.Number).Net);
            deck.Resistor(FormattableString.Invariant($"{valve.Designator}s{section}hk"), end, node("k"), leak);
        }
    }

    private static double Emission(FaultsOf faults, int section)
    {
        var name = section.ToString(CultureInfo.InvariantCulture);
        if (faults.Has(FailureMode.Open, "heater") || faults.Has(FailureMode.Dead) || faults.Has(FailureMode.Dead, name))
        {
            return 0;
        }

        return faults.Severity(FailureMode.LowEmission, 1) * faults.Severity(FailureMode.LowEmission, 1, name);
    }

    private static void WriteSection(
        Deck deck,
        ValvePart valve,
        string name,
        Func<string, string> node,
        double emission,
        double gas
    )
    {
        var law = valve.Device;
        switch (law.Kind)
        {
            case DeviceKind.Triode:
                WriteTriode(deck, law, name, node, emission, gas);
                break;
            case DeviceKind.Pentode:
                WritePentode(deck, law, name, node, emission, gas);
                break;
            default:
                var (a, k) = (node("a"), node("k"));
                var volts = Expression.Positive($"v({a},{k})");
                deck.Current(name, a, k, FormattableString.Invariant($"{emission * law["k"]:R}*pow({volts},1.5)"));
                break;
        }
    }

    private static void WriteTriode(Deck deck, Device law, string name, Func<string, string> node, double emission, double gas)
    {
        var (a, g, k) = (node("a"), node("g"), node("k"));
        var anode = Expression.Positive($"v({a},{k})");
        var drive = FormattableString.Invariant(
            $"{law["kp"]:R}*({1 / law["mu"]:R}+(v({g},{k})+{law["vct"]:R})/sqrt({law["kvb"]:R}+{anode}*{anode}))"
        );
        var e = FormattableString.Invariant($"{anode}/{law["kp"]:R}*{Expression.Softplus(drive)}");
        WriteAnode(deck, name, node, gas, FormattableString.Invariant($"{2 * emission / law["kg1"]:R}*pow({e},{law["ex"]:R})"));
        WriteGrid(deck, law, name, g, k, emission);
    }

    private static void WritePentode(Deck deck, Device law, string name, Func<string, string> node, double emission, double gas)
    {
        var (a, g, k, s) = (node("a"), node("g"), node("k"), node("g2"));
        var (anode, screen) = (Expression.Positive($"v({a},{k})"), Expression.Positive($"v({s},{k})"));
        var pull = law.Law.TryGetValue("mua", out var mua) ? 1 / mua : 0;
        var pulled = FormattableString.Invariant($"(v({g},{k})+{pull:R}*{anode})");
        var drive = FormattableString.Invariant($"{law["kp"]:R}*({1 / law["mu"]:R}+{pulled}/{screen})");
        var e = FormattableString.Invariant($"{screen}/{law["kp"]:R}*{Expression.Softplus(drive)}");
        var knee = FormattableString.Invariant($"atan({anode}/{law["kvb"]:R})");
        var (share, perDrive) = (law.Law.GetValueOrDefault("kns"), law.Law.GetValueOrDefault("kne"));
        var screenKnee =
            share > 0 || perDrive > 0
                ? FormattableString.Invariant($"atan({anode}/({share:R}*{screen}+{perDrive:R}*({e})+1E-12))")
                : knee;
        var back = law.Law.GetValueOrDefault("back") * Math.PI / 2 * law["kg2"] / law["kg1"];
        WriteAnode(
            deck,
            name,
            node,
            gas,
            FormattableString.Invariant($"{2 * emission / law["kg1"]:R}*pow({e},{law["ex"]:R})*{knee}")
        );
        deck.Current(
            name + "s",
            s,
            k,
            FormattableString.Invariant(
                $"{2 * emission / law["kg2"]:R}*pow({e},{law["ex"]:R})*(1+{law["ks"]:R}*(1-{2 / Math.PI:R}*{screenKnee})+{back:R}*pow(1-{2 / Math.PI:R}*{knee},2))"
            )
        );
        WriteGrid(deck, law, name, g, k, emission);
    }

    private static void WriteGrid(Deck deck, Device law, string name, string g, string k, double emission)
    {
        var soft = Expression.Softplus(FormattableString.Invariant($"{law["cg"]:R}*v({g},{k})"));
        deck.Current(
            name + "g",
            g,
            k,
            FormattableString.Invariant($"{emission * law["gg"]:R}*pow({soft}/{law["cg"]:R},{law["xi"]:R})")
        );
    }
}
