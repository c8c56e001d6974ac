using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Xml.Linq;
using Xunit;

namespace Slowglow.Tests.House;

/// <summary>The arrows between the rooms.</summary>
public class ArrowsTests
{
    private const string Prefix = "Slowglow.";

    public static TheoryData<string> Projects() =>
        [.. Repository.Files("src", ".csproj").Select(p => Path.GetFileNameWithoutExtension(p)[Prefix.Length..])];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_refers_only_to_rooms_it_may(string room)
    {
        Assert.True(
            Rooms.MayReferTo.ContainsKey(room),
            $"{room} is a new room: give it a row in Rooms and in docs/architecture.md."
        );
        var project = XDocument.Load(Path.Combine(Repository.Root, "src", Prefix + room, $"{Prefix}{room}.csproj"));
        var references = project
            .Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))[Prefix.Length..]);
        Assert.Empty(references.Except(Rooms.MayReferTo[room]));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_compiled_room_uses_only_rooms_it_may(string room)
    {
        var file = CompiledFile(room);
        Assert.True(File.Exists(file), $"{file} is missing: build the solution first.");
        using var image = new PEReader(File.OpenRead(file));
        var metadata = image.GetMetadataReader();
        var used = metadata
            .AssemblyReferences.Select(h => metadata.GetString(metadata.GetAssemblyReference(h).Name))
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..]);
        Assert.Empty(used.Except(Rooms.MayUse(room)));
    }

    [Fact]
    public void The_table_in_the_documentation_names_every_room()
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, "docs", "architecture.md"));
        foreach (var room in Projects().Select(r => r.Data))
        {
            Assert.Contains($"Slowglow.{room}/", text, StringComparison.Ordinal);
        }
    }

    private static string CompiledFile(string room)
    {
        // The room's own output: the copy beside the tests may belong to an older build.
        var configuration = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
        var name = room == "Cli" ? "slowglow.dll" : $"{Prefix}{room}.dll";
        return Path.Combine(Repository.Root, "src", Prefix + room, "bin", configuration, "net10.0", name);
    }
}
