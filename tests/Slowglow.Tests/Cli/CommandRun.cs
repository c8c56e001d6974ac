namespace Slowglow.Tests.Cli;

/// <summary>What one run of the command gave.</summary>
internal sealed record CommandRun(int Code, string Out, string Error);
