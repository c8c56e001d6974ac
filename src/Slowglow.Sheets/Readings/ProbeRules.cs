using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;
using Slowglow.Sheets.Setups;

namespace Slowglow.Sheets.Readings;

/// <summary>What a reading must agree with: its unit, its kind, and how the bench stood.</summary>
internal static class ProbeRules
{
    /// <summary>Kind of a reading that does not say one.</summary>
    internal static ProbeKind Usual(Probe place, Unit unit, Setup setup) =>
        place.IsInlet ? ProbeKind.Ac
        : unit == Unit.Ohm || (unit == Unit.None && setup.PowerOff) ? ProbeKind.Ohm
        : ProbeKind.Dc;

    internal static bool InletOnlyAc(Probe place, ProbeKind kind, Place at, FindingList findings)
    {
        if (!place.IsInlet || kind == ProbeKind.Ac)
        {
            return true;
        }

        findings.Error(at, "MAINS is the inlet current, and that is ac", "write MAINS = 85 mA ac");
        return false;
    }

    internal static bool LevelNeedsSignal(Sheet sheet, ProbeKind kind, Place at, FindingList findings)
    {
        if (kind != ProbeKind.Level || sheet.Signals.Count > 0)
        {
            return true;
        }

        findings.Error(at, "a level needs to know where the signal goes in", "add signal: { in: IN, out: OUT } to the sheet");
        return false;
    }

    internal static bool Check(Probe probe, Quantity value, Setup setup, Sheet sheet, Place at, FindingList findings) =>
        InletOnlyAc(probe, probe.Kind, at, findings)
        && LevelNeedsSignal(sheet, probe.Kind, at, findings)
        && UnitFits(probe, value, at, findings)
        && PowerFits(probe, setup, at, findings)
        && SignFits(probe, value, at, findings);

    private static bool UnitFits(Probe probe, Quantity value, Place at, FindingList findings)
    {
        var wanted =
            probe.IsInlet ? Unit.Ampere
            : probe.Kind == ProbeKind.Ohm ? Unit.Ohm
            : Unit.Volt;
        if (value.Fits(wanted))
        {
            return true;
        }

        var text =
            value.Unit == Unit.Ampere
                ? "a current is read at MAINS only"
                : $"a figure in {UnitNames.Of(value.Unit)} is no {(probe.IsInlet ? "inlet current" : probe.KindText + " reading")}";
        findings.Error(
            at,
            text,
            value.Unit == Unit.Ampere ? "write the volts across a resistor instead" : $"it is read in {UnitNames.Of(wanted)}"
        );
        return false;
    }

    private static bool PowerFits(Probe probe, Setup setup, Place at, FindingList findings)
    {
        var dead = probe.Kind is ProbeKind.Ohm or ProbeKind.Diode;
        if (dead == setup.PowerOff)
        {
            return true;
        }

        if (dead)
        {
            var what = probe.Kind == ProbeKind.Ohm ? "ohms are" : "the diode test is";
            findings.Error(
                at,
                $"{what} read with the power off, and setup '{setup.Name}' has it on",
                "add on cold, with cold: { power: off } under setups"
            );
        }
        else
        {
            findings.Error(
                at,
                $"setup '{setup.Name}' has the power off: there are no volts or amperes to read",
                "say ohm or diode, or name another setup"
            );
        }

        return false;
    }

    private static bool SignFits(Probe probe, Quantity value, Place at, FindingList findings)
    {
        if (!(value.Value < 0) || probe.Kind is ProbeKind.Dc or ProbeKind.Diode)
        {
            return true;
        }

        findings.Error(
            at,
            probe.Kind == ProbeKind.Ohm ? "a resistance cannot be negative" : "an ac reading cannot be negative",
            "leave the minus out"
        );
        return false;
    }
}
