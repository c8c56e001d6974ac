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
        new OpAmpCards(),
        new RegulatorCards(),
        new TransformerCards(),
    ];

    public ReferenceCircuit(Sheet sheet, Setup setup, IReadOnlyList<Fault> faults)
    {
        Bench = new Bench(sheet, setup);
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

        var peak = Bench.MainsVolts * Math.Sqrt(2);
        Deck.Card($"vmains {Deck.Node(NetTable.Live)} 0 sin(0 {peak:R} {Bench.Frequency:R})");
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

    /// <summary>The deck as text, for one run that starts from a state.</summary>
    public IReadOnlyList<string> Text(CircuitState start)
    {
        List<string> lines = ["slowglow reference", .. Deck.Cards(start.CoilAmps)];
        lines.AddRange(start.NodeVolts.Select(v => FormattableString.Invariant($".ic v({v.Key})={v.Value:R}")));
        lines.Add(".options temp=26.85 tnom=26.85 reltol=1e-7 abstol=1e-11 vntol=1e-7 trtol=1e4 gmin=1e-12 itl4=100 itl1=500 method=gear");
        lines.Add(".end");
        return lines;
    }
}
