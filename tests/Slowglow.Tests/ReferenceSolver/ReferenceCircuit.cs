using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Connector;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.ReferenceSolver.Cards;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>A sheet in a setup with faults, translated for the reference solver by the laws that our own solver states.</summary>
internal sealed class ReferenceCircuit
{
    private static readonly PartCards[] Families =
    [
        new TwoEndedCards(),
        new ReactiveCards(),
        new PotCards(),
        new ValveCards(),
        new DiodeCards(),
        new TransistorCards(),
        new FieldEffectCards(),
        new DarlingtonCards(),
        new OptocouplerCards(),
        new OpAmpCards(),
        new RegulatorCards(),
        new TransformerCards(),
    ];

    /// <summary>27 C less a little, where kT/q is our solver's 25.852 mV; steps by the grid asked for rather than by estimated error.</summary>
    private const string Options =
        ".options temp=26.85 tnom=26.85 reltol=1e-6 abstol=1e-9 vntol=1e-6 trtol=1e4 itl4=100 itl1=500 method=gear";

    /// <summary>
    /// Its last Newton step is within a hundredth of a millivolt, and so the state far nearer; tighter, and the noise of amperes in a milliohm of
    /// winding keeps it from being content.
    /// </summary>
    private const string RestOptions = ".options temp=26.85 tnom=26.85 gmin=1e-14 itl1=300";

    private const string Narrow = "reltol=1e-6 abstol=1e-8 vntol=1e-5";

    /// <summary>
    /// Where rounding keeps the reference from that: a mains winding's amperes in its milliohms end in tens of microamperes, and an op-amp multiplies what
    /// is left at its inputs. The state is nearer than its last step.
    /// </summary>
    private const string Rounded = "reltol=1e-4 abstol=1e-3 vntol=1e-3";

    private const string SignalOptions =
        ".options temp=26.85 tnom=26.85 reltol=1e-5 abstol=1e-8 vntol=1e-5 trtol=1e4 gmin=1e-14 itl4=100 itl1=300 method=gear";

    /// <summary>Siemens that the reference adds to every junction in its cycle. Small, or transistors in a row amplify it; larger where it cannot start otherwise.</summary>
    public double Leak { get; init; } = 1e-14;

    /// <summary>What our solver takes the outlet for.</summary>
    private const double MainsOhms = 0.4;
    private readonly Dictionary<string, string> coreOfCoil;

    public ReferenceCircuit(
        Sheet sheet,
        Setup setup,
        IReadOnlyList<Fault> faults,
        IReadOnlyDictionary<string, double>? warmth = null,
        ReferenceRun run = ReferenceRun.Cycle,
        double lampOhms = 0
    )
    {
        Bench = new Bench(sheet, setup) { Warmth = warmth ?? new Dictionary<string, double>(), Run = run };
        foreach (var part in sheet.Parts.Where(p => p is not ConnectorPart))
        {
            var wrong = new FaultsOf(part.Designator, faults);
            if (!Families.Any(f => f.Write(Deck, part, wrong, Bench)))
            {
                throw new NotSupportedException(
                    $"The reference solver has no cards for {part.Designator} ({part.GetType().Name})."
                );
            }
        }

        coreOfCoil = sheet
            .Parts.OfType<TransformerPart>()
            .ToDictionary(TransformerCards.CoilOf, t => Deck.Inner(t.Designator, TransformerCards.Core));
        WriteMains(lampOhms);
    }

    /// <summary>The outlet across live and neutral, with neutral and earth joined to the chassis as our bench joins them.</summary>
    private void WriteMains(double lampOhms)
    {
        if (Deck.Nodes.ContainsKey(NetTable.Earth))
        {
            Deck.Resistor("earth", Deck.Node(NetTable.Earth), "0", PartCards.JoinOhms);
        }

        if (!Deck.Nodes.ContainsKey(NetTable.Live) || !Deck.Nodes.ContainsKey(NetTable.Neutral))
        {
            return;
        }

        var peak = Bench.MainsVolts * Math.Sqrt(2);
        var (outlet, neutral) = (Deck.Inner("MAINS", "outlet"), Deck.Node(NetTable.Neutral));
        FormattableString volts = Bench.Run switch
        {
            ReferenceRun.Cycle => $"sin(0 {peak:R} {Bench.Frequency:R})",
            ReferenceRun.Crest => $"dc {peak:R}",
            _ => $"dc 0",
        };
        Deck.Card($"vmains {outlet} {neutral} {FormattableString.Invariant(volts)}");
        Deck.Resistor("mains", outlet, Deck.Node(NetTable.Live), MainsOhms + lampOhms);
        Deck.Resistor("neutral", neutral, "0", PartCards.JoinOhms);
    }

    public Deck Deck { get; } = new();

    public Bench Bench { get; }

    /// <summary>
    /// Magnetising currents at the upward zero crossing of the mains, where a run begins: without them the core would swing off its middle and
    /// take seconds to come back.
    /// </summary>
    /// <param name="primaryVolts">Volts rms at the two ends of a transformer's first winding.</param>
    public Dictionary<string, double> Magnetised(Func<string, double> primaryVolts)
    {
        var amps = new Dictionary<string, double>();
        foreach (var transformer in Bench.Sheet.Parts.OfType<TransformerPart>().Where(t => !t.IsOutput))
        {
            var pins = transformer.Windings[0].Pins;
            var volts = Math.Abs(primaryVolts(transformer.NetOf(pins[0])!) - primaryVolts(transformer.NetOf(pins[^1])!));
            var henries = Magnetising.Henries(transformer, Bench.Sheet.Mains);
            amps[TransformerCards.CoilOf(transformer)] = -volts * Math.Sqrt(2) / (2 * Math.PI * Bench.Frequency * henries);
        }

        return amps;
    }

    /// <summary>The deck as text for a resting state, looked for from the volts of nets given.</summary>
    /// <param name="rounded">Judges less narrowly when it has arrived.</param>
    public IReadOnlyList<string> RestText(IReadOnlyDictionary<string, double> from, bool rounded = false) =>
        Text(from, $"{RestOptions} {(rounded ? Rounded : Narrow)}");

    /// <summary>The deck as text for a run that starts at the resting state.</summary>
    public IReadOnlyList<string> SignalText(IReadOnlyDictionary<string, double> from) => Text(from, SignalOptions);

    private List<string> Text(IReadOnlyDictionary<string, double> from, string options) =>
        [
            "slowglow reference from rest",
            .. Deck.Cards,
            .. Deck.Start(from).Select(v => FormattableString.Invariant($".nodeset v({v.Key})={v.Value:R}")),
            options,
            ".end",
        ];

    /// <summary>
    /// The deck as text, for one run that starts from a state: only nets are held, what is inside parts finds its own start. A core's
    /// magnetising current is set through the hundredth of an ohm in series with it. The tick makes the solver's steps fall alike in every
    /// cycle, so that rounding does not pass for movement.
    /// </summary>
    public IReadOnlyList<string> Text(CircuitState start)
    {
        List<string> lines = ["slowglow reference", .. Deck.Cards];
        var cores = start.CoilAmps.Where(c => coreOfCoil.ContainsKey(c.Key)).ToDictionary(c => coreOfCoil[c.Key], c => c.Value);
        lines.AddRange(start.NodeVolts.Select(v => FormattableString.Invariant($".ic v({v.Key})={v.Value:R}")));
        lines.AddRange(
            cores.Select(c => FormattableString.Invariant($".ic v({c.Key})={c.Value * TransformerCards.MagnetisingOhms:R}"))
        );
        var period = 1 / Bench.Frequency;
        lines.Add(
            FormattableString.Invariant($"vtick tick 0 pulse(0 1 {period / 4:R} 1u 1u {(period / 2) - 1e-6:R} {period:R})")
        );
        lines.Add("rtick tick 0 1");
        lines.Add(FormattableString.Invariant($"{Options} gmin={Leak:R}"));
        lines.Add(".end");
        return lines;
    }
}
