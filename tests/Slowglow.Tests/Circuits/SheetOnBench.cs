using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits;

/// <summary>A small sheet, solved, for tests to ask.</summary>
internal sealed class SheetOnBench
{
    private SheetOnBench(Sheet sheet, Circuit circuit)
    {
        Sheet = sheet;
        Circuit = circuit;
        Worlds = new Worlds(circuit);
    }

    public Sheet Sheet { get; }
    public Circuit Circuit { get; }
    public Worlds Worlds { get; }

    public static SheetOnBench From(string text)
    {
        var sheet = SheetReader.Read(text);
        Assert.True(sheet.Value is not null, string.Join('\n', sheet.Findings));
        var circuit = Circuit.From(sheet.Value);
        Assert.True(circuit.Value is not null, string.Join('\n', circuit.Findings));
        return new SheetOnBench(sheet.Value, circuit.Value);
    }

    public Answer Ask(string probe, Setup? setup = null, params Fault[] faults)
    {
        var parsed = ReadingsReader.ReadProbe(probe, Sheet);
        Assert.True(parsed.Value is not null, string.Join('\n', parsed.Findings));
        return Worlds.Ask(
            setup ?? Setup.Default,
            [faults],
            [parsed.Value],
            MeterClass.Handheld,
            cancel: TestContext.Current.CancellationToken
        )[0][0];
    }

    public double Volts(string probe, Setup? setup = null, params Fault[] faults)
    {
        var answer = Ask(probe, setup, faults);
        Assert.Equal(AnswerKind.Value, answer.Kind);
        return answer.Value;
    }
}
