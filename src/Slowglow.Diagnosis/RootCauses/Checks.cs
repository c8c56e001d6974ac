namespace Slowglow.Diagnosis.RootCauses;

/// <summary>What else to look at, part by part, and all of it in a sentence.</summary>
/// <param name="BeforePower">"Before power goes back on, check ..."; empty when there is nothing to check.</param>
internal sealed record Checks(IReadOnlyList<RootCause> Parts, string BeforePower);
