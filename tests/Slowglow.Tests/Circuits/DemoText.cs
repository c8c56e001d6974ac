using Slowglow.Tests.House;

namespace Slowglow.Tests.Circuits;

/// <summary>The sheets of the demo units.</summary>
internal static class DemoText
{
    public static string Of(string unit) => File.ReadAllText(Path.Combine(Repository.Root, "demo", unit, "sheet.yaml"));
}
