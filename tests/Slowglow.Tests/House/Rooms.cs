namespace Slowglow.Tests.House;

/// <summary>Which room may refer to which. This is the table of docs/architecture.md.</summary>
internal static class Rooms
{
    private static readonly string[] EveryRoom =
    [
        "Quantities",
        "Solving",
        "Sheets",
        "Circuits",
        "Drawing",
        "Diagnosis",
        "Power",
        "Listening",
        "Workshop",
        "Storage",
        "Documents",
    ];

    private static readonly string[] Providers = ["Storage.Sqlite", "Storage.Postgres"];

    /// <summary>Project references allowed, by room.</summary>
    public static IReadOnlyDictionary<string, string[]> MayReferTo { get; } =
        new Dictionary<string, string[]>
        {
            ["Quantities"] = [],
            ["Solving"] = [],
            ["Sheets"] = ["Quantities"],
            ["Listening"] = ["Quantities"],
            ["Workshop"] = ["Quantities"],
            ["Drawing"] = ["Sheets", "Quantities"],
            ["Circuits"] = ["Sheets", "Solving", "Quantities"],
            ["Diagnosis"] = ["Circuits", "Sheets", "Quantities"],
            ["Power"] = ["Circuits", "Sheets", "Quantities"],
            ["Storage"] = ["Workshop", "Quantities"],
            ["Documents"] = ["Workshop", "Quantities"],
            ["Storage.Sqlite"] = ["Storage"],
            ["Storage.Postgres"] = ["Storage"],
            ["Bench"] = EveryRoom,
            ["Web"] = ["Bench", .. Providers],
            // The command starts the page's host for `slowglow bench`, so that one program is enough at the bench.
            ["Cli"] = ["Bench", "Web", .. Providers],
        };

    /// <summary>
    /// What the compiled room may use. Page and command show the rooms' own records, which Bench's answers carry; equations they never see.
    /// </summary>
    public static IEnumerable<string> MayUse(string room) =>
        room switch
        {
            "Web" or "Cli" => MayReferTo[room].Concat(EveryRoom).Except(["Solving"]),
            "Storage.Sqlite" or "Storage.Postgres" => MayReferTo[room].Concat(MayReferTo["Storage"]),
            _ => MayReferTo[room],
        };
}
