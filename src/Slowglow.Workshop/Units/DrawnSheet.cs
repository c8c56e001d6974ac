namespace Slowglow.Workshop.Units;

/// <summary>A circuit sheet that the shop has drawn; several jobs may share it.</summary>
public sealed class DrawnSheet
{
    /// <summary>Given by the database.</summary>
    public int Id { get; private set; }

    /// <summary>Maker and model that it belongs to.</summary>
    public required string Title { get; init; }

    /// <summary>The sheet document as typed.</summary>
    public required string Text { get; init; }

    public required DateTimeOffset AddedAt { get; init; }
}
