using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Doubts;

/// <summary>The readings, sorted by what can be done with them.</summary>
/// <param name="All">In the order given, each place of a line by itself.</param>
/// <param name="Weighed">What a meter or tracer said and nothing speaks against.</param>
/// <param name="Looks">What was seen, smelt and felt.</param>
/// <param name="Aside">Contradictory or impossible: not weighed.</param>
/// <param name="Doubts">A sentence for each contradiction; an answer is never confident beside one.</param>
internal sealed record Sifted(
    IReadOnlyList<Reading> All,
    IReadOnlyList<Reading> Weighed,
    IReadOnlyList<Reading> Looks,
    IReadOnlyList<Reading> Aside,
    IReadOnlyList<string> Doubts
);
