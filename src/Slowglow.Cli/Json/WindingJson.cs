namespace Slowglow.Cli.Json;

/// <summary>Current in a winding or a section of one, amperes; <c>rated</c> is null where the sheet gives none.</summary>
internal sealed record WindingJson(string Part, string Winding, string From, string To, double Rms, double Dc, double Rated);
