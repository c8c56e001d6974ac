using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Unknown;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Bench.Questions;

/// <summary>From which net to which a signal can step through one part. Ground and rails carry no signal.</summary>
internal sealed class SignalSteps
{
    private readonly Dictionary<string, HashSet<string>> forward = [];
    private readonly HashSet<string> still;

    public SignalSteps(Sheet sheet)
    {
        var joins = NetJoins.ByWires(sheet);
        still = [.. sheet.Nets.Names.Where(joins.IsGround), .. Rails.Of(sheet)];
        foreach (var part in sheet.Parts)
        {
            Add(part);
        }
    }

    /// <summary>Steps from a net to every net a signal reaches from it.</summary>
    public IReadOnlyDictionary<string, int> From(string start) => Walk(start, n => forward.GetValueOrDefault(n) ?? []);

    /// <summary>Steps from every net that reaches the end, to that end.</summary>
    public IReadOnlyDictionary<string, int> To(string end)
    {
        var backward = forward.SelectMany(f => f.Value.Select(to => (From: f.Key, To: to))).ToLookup(s => s.To, s => s.From);
        return Walk(end, n => backward[n]);
    }

    private static Dictionary<string, int> Walk(string start, Func<string, IEnumerable<string>> next)
    {
        Dictionary<string, int> steps = new() { [start] = 0 };
        Queue<string> queue = new([start]);
        while (queue.TryDequeue(out var net))
        {
            foreach (var reached in next(net))
            {
                if (steps.TryAdd(reached, steps[net] + 1))
                {
                    queue.Enqueue(reached);
                }
            }
        }
        return steps;
    }

    private void Add(Part part)
    {
        switch (part)
        {
            case ResistorPart or CapacitorPart or InductorPart or WirePart or FusePart or ContactPart or UnknownPart:
                Both(part.Pins[0].Net, part.Pins[1].Net);
                break;
            case PotPart:
                Step(part.NetOf("1"), part.NetOf("2"));
                break;
            case ValvePart valve:
                AddValve(valve);
                break;
            case TransistorPart transistor:
                AddTransistor(transistor);
                break;
            case OpAmpPart amplifier:
                AddOpAmp(amplifier);
                break;
            case TransformerPart transformer:
                AddTransformer(transformer);
                break;
        }
    }

    private void AddValve(ValvePart valve)
    {
        foreach (var section in valve.Device.Pinout.Where(p => p.Section > 0).GroupBy(p => p.Section))
        {
            string? Net(string electrode)
            {
                var number = section.FirstOrDefault(p => p.Electrode == electrode)?.Number;
                return number is null ? null : valve.NetOf(number);
            }

            Step(Net("g"), Net("a"));
            Step(Net("g"), Net("k"));
            Step(Net("k"), Net("a"));
        }
    }

    private void AddTransistor(TransistorPart transistor)
    {
        foreach (var (gate, drain, source) in new[] { ("b", "c", "e"), ("g", "d", "s") })
        {
            Step(transistor.NetOf(gate), transistor.NetOf(drain));
            Step(transistor.NetOf(gate), transistor.NetOf(source));
            Step(transistor.NetOf(source), transistor.NetOf(drain));
        }
    }

    private void AddOpAmp(OpAmpPart amplifier)
    {
        foreach (var section in amplifier.Device.Pinout.Where(p => p.Section > 0).GroupBy(p => p.Section))
        {
            var output = section.FirstOrDefault(p => p.Electrode == "out");
            foreach (var input in section.Where(p => p.Electrode.StartsWith("in", StringComparison.Ordinal)))
            {
                Step(amplifier.NetOf(input.Number), output is null ? null : amplifier.NetOf(output.Number));
            }
        }
    }

    private void AddTransformer(TransformerPart transformer)
    {
        var primary = transformer.Windings.Where(w => w.IsPrimary).SelectMany(w => w.Pins).Select(transformer.NetOf).ToArray();
        var others = transformer.Windings.Where(w => !w.IsPrimary).SelectMany(w => w.Pins).Select(transformer.NetOf).ToArray();
        foreach (var from in transformer.IsOutput ? primary : [])
        {
            foreach (var to in others)
            {
                Step(from, to);
            }
        }
    }

    private void Both(string a, string b)
    {
        Step(a, b);
        Step(b, a);
    }

    private void Step(string? from, string? to)
    {
        if (from is null || to is null || from == to || still.Contains(from) || still.Contains(to))
        {
            return;
        }

        if (!forward.TryGetValue(from, out var reached))
        {
            forward[from] = reached = [];
        }
        reached.Add(to);
    }
}
