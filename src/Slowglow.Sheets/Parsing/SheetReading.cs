using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>One reading of one sheet, section by section.</summary>
internal sealed class SheetReading(string text, Func<DeviceLibrary> library)
{
    internal static readonly string[] Sections =
    [
        "sheet",
        "unit",
        "maker",
        "year",
        "mains",
        "switches",
        "controls",
        "parts",
        "signal",
        "points",
        "devices",
        "note",
        "notes",
    ];

    private readonly FindingList findings = new();

    internal Parsed<Sheet> Run()
    {
        var root = YamlDocumentReader.Read(text, findings);
        var sheet = root is null ? null : Whole(new Keys(root, "the sheet", findings));
        return new Parsed<Sheet>(sheet, findings.InOrder());
    }

    private Sheet Whole(Keys keys)
    {
        keys.WarnUnknown(Sections);
        Version(keys);
        var (devices, brokenTypes) = DeviceSection.Read(keys.Map("devices"), library(), findings);
        var context = new SheetContext
        {
            Findings = findings,
            Devices = devices,
            BrokenTypes = brokenTypes,
        };
        var unit = keys.Text("unit");
        if (unit is null)
        {
            findings.Warning(
                new Place(1, 1),
                "the sheet does not say which unit it is",
                "write unit: what is printed on the front"
            );
        }

        context.Mains = MainsSection.Read(keys.Find("mains"), context);
        SwitchSection.Read(keys.Map("switches"), context);
        ControlSection.Read(keys.Map("controls"), context);
        var plans = PartSection.Read(keys.Map("parts"), context);
        if (keys.Find("parts") is null)
        {
            findings.Error(new Place(1, 1), "the sheet has no parts", "write parts: and under it a line for each");
        }

        return Assemble(keys, unit, plans, context);
    }

    private Sheet Assemble(Keys keys, string? unit, IReadOnlyList<PartPlan> plans, SheetContext context)
    {
        context.RunAfterwards();
        var resolver = new NetResolver(plans, context);
        resolver.Resolve();
        var (nets, pins) = resolver.Table();
        var parts = plans.Select(p => Built(p, pins[p.Entry.Designator])).ToList();
        NetChecks.Run(nets, resolver.PlaceOf, findings);
        ControlSection.CheckUsed(context);
        var signals = SignalSection.Read(keys.Find("signal"), nets, context);
        var points = PointSection.Read(keys.Map("points"), nets, parts, context);
        return new Sheet
        {
            Unit = unit ?? "unnamed unit",
            Maker = keys.Text("maker"),
            Year = YearSection.Read(keys.Scalar("year"), findings),
            Mains = context.Mains,
            Switches = context.Switches,
            Controls = context.Controls,
            Parts = parts,
            Signals = signals,
            Nets = nets,
            Points = points,
            Assumptions = context.Assumptions,
        };
    }

    private static Part Built(PartPlan plan, IReadOnlyList<Pin> pins)
    {
        var part = plan.Build(pins);
        return double.IsNaN(plan.Entry.AccessMinutes) ? part : part with { AccessMinutes = plan.Entry.AccessMinutes };
    }

    private void Version(Keys keys)
    {
        if (keys.Scalar("sheet") is not { } version)
        {
            if (keys.Find("sheet") is null)
            {
                findings.Note(new Place(1, 1), "the sheet does not say its format version; 1 is assumed", "write sheet: 1");
            }
        }
        else if (version.Text != "1")
        {
            findings.Error(version.Place, $"sheet format '{version.Text}' is not known", "this program reads sheet: 1");
        }
    }
}
