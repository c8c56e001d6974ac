namespace Slowglow.Diagnosis;

/// <summary>The answer: who is suspected, how sure that is, and what to do next. Probabilities of suspects, Healthy and NoneOfThese sum to one.</summary>
public sealed record DiagnosisResult(
    IReadOnlyList<Suspect> Suspects,
    double Healthy,
    double NoneOfThese,
    IReadOnlyList<NextReading> Next,
    IReadOnlyList<RootCause> RootCauses,
    IReadOnlyList<UnderstoodWord> Complaint,
    IReadOnlyList<ReadingVerdict> Readings,
    string Summary
)
{
    /// <summary>A sentence for every contradiction or impossible figure in the evidence; beside one no suspect passes a half.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>A sentence for each reading that ruled parts out: which, and how many.</summary>
    public IReadOnlyList<string> RuledOut { get; init; } = [];

    /// <summary>How to prove the leading suspect out of circuit, with what a good and a bad one would show; empty while none is near certain.</summary>
    public string Prove { get; init; } = "";

    /// <summary>Why to stop measuring and replace the leading suspect; empty while measuring is cheaper.</summary>
    public string Stop { get; init; } = "";

    /// <summary>"Before power goes back on, check ..."; empty when there is nothing to check.</summary>
    public string BeforePower { get; init; } = "";
}
