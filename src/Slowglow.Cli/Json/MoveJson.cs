namespace Slowglow.Cli.Json;

/// <summary>What <c>move</c> carried over and compared.</summary>
internal sealed record MoveJson(IReadOnlyList<MovedTableJson> Tables);
