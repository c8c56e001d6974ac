using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>One look for every table and line. Text is never taken as markup.</summary>
internal static class Layout
{
    /// <summary>A table with those headings; a heading that begins with ">" is set to the right.</summary>
    public static Table Table(params string[] headings)
    {
        var table = new Table().Border(TableBorder.Simple);
        foreach (var heading in headings)
        {
            var right = heading.StartsWith('>');
            var column = new TableColumn(new Text(heading.TrimStart('>'), new Style(decoration: Decoration.Bold)));
            table.AddColumn(right ? column.RightAligned() : column);
        }
        return table;
    }

    /// <summary>Adds a row of plain text.</summary>
    public static void Row(this Table table, params string[] cells) => table.AddRow(cells.Select(c => new Text(c)));

    /// <summary>A line of plain text.</summary>
    public static void Say(this IAnsiConsole console, string text) => console.Write(new Text(text + "\n"));

    /// <summary>A heading with an empty line before it.</summary>
    public static void Heading(this IAnsiConsole console, string text) =>
        console.Write(new Text($"\n{text}\n", new Style(decoration: Decoration.Bold)));
}
