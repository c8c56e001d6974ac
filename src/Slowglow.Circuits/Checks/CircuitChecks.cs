using Slowglow.Sheets;

namespace Slowglow.Circuits.Checks;

/// <summary>Everything that is looked at before a circuit is solved.</summary>
internal static class CircuitChecks
{
    public static IEnumerable<Finding> Of(Sheet sheet)
    {
        if (!sheet.Parts.Any(p => p.Pins.Any(pin => pin.Net == NetTable.Ground)))
        {
            yield return new Finding(
                Severity.Error,
                sheet.Parts.Count > 0 ? sheet.Parts[0].Place : Place.None,
                "nothing is connected to GND, so no voltage has a reference",
                "name the chassis net GND on the parts that go to it"
            );
            yield break;
        }

        foreach (var finding in FloatingNets.Of(sheet).Concat(CathodeReturns.Of(sheet)).Concat(SourceLoops.Of(sheet)))
        {
            yield return finding;
        }
    }
}
