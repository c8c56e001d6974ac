using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Unknown;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Every way from one net to the next that a signal can take through one part. Ground and rails carry no signal.</summary>
internal sealed class SignalSteps
{
    private readonly List<SignalStep> steps = [];
    private readonly HashSet<string> still;

    private SignalSteps(Sheet sheet, Setup setup)
    {
        var joins = NetJoins.In(setup, sheet);
        var rails = Rails.Of(sheet, setup).Select(joins.Of).ToHashSet();
        still = [.. sheet.Nets.Names.Where(n => joins.IsGround(n) || rails.Contains(joins.Of(n)))];
        foreach (var part in sheet.Parts.Where(p => p is not ContactPart contact || NetJoins.IsClosed(contact, sheet, setup)))
        {
            Add(part);
        }
    }

    /// <summary>All steps of a sheet, with switches as they stand in the setup.</summary>
    public static IReadOnlyList<SignalStep> Of(Sheet sheet, Setup setup) => new SignalSteps(sheet, setup).steps;

    private void Add(Part part)
    {
        switch (part)
        {
            case ResistorPart or CapacitorPart or InductorPart or UnknownPart:
                Both(part, SignalStepKind.Passive);
                break;
            case WirePart or FusePart or ContactPart:
                Both(part, SignalStepKind.Joint);
                break;
            case OptocouplerPart:
                Add(part, part.NetOf("ra"), part.NetOf("rb"), SignalStepKind.Passive);
                Add(part, part.NetOf("rb"), part.NetOf("ra"), SignalStepKind.Passive);
                break;
            case PotPart:
                Add(part, part.NetOf("1"), part.NetOf("2"), SignalStepKind.Passive);
                Add(part, part.NetOf("3"), part.NetOf("2"), SignalStepKind.Passive);
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

            Add(valve, Net("g"), Net("a"));
            Add(valve, Net("g"), Net("k"));
            Add(valve, Net("k"), Net("a"));
        }
    }

    private void AddTransistor(TransistorPart transistor)
    {
        foreach (var (gate, drain, source) in new[] { ("b", "c", "e"), ("g", "d", "s") })
        {
            Add(transistor, transistor.NetOf(gate), transistor.NetOf(drain));
            Add(transistor, transistor.NetOf(gate), transistor.NetOf(source));
            Add(transistor, transistor.NetOf(source), transistor.NetOf(drain));
        }
    }

    private void AddOpAmp(OpAmpPart amplifier)
    {
        foreach (var section in amplifier.Device.Pinout.Where(p => p.Section > 0).GroupBy(p => p.Section))
        {
            var output = section.FirstOrDefault(p => p.Electrode == "out");
            foreach (var input in section.Where(p => p.Electrode.StartsWith("in", StringComparison.Ordinal)))
            {
                Add(amplifier, amplifier.NetOf(input.Number), output is null ? null : amplifier.NetOf(output.Number));
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
                Add(transformer, from, to, SignalStepKind.Joint);
            }
        }
    }

    private void Both(Part part, SignalStepKind kind)
    {
        Add(part, part.Pins[0].Net, part.Pins[1].Net, kind);
        Add(part, part.Pins[1].Net, part.Pins[0].Net, kind);
    }

    private void Add(Part part, string? from, string? to, SignalStepKind kind = SignalStepKind.Active)
    {
        if (from is not null && to is not null && from != to && !still.Contains(from) && !still.Contains(to))
        {
            steps.Add(new(from, to, part.Designator, kind));
        }
    }
}
