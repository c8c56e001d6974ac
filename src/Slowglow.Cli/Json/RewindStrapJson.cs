namespace Slowglow.Cli.Json;

/// <summary>How two primary halves are strapped for a mains voltage.</summary>
internal sealed record RewindStrapJson(double Mains, bool Series, double FirstTap, double SecondTap);
