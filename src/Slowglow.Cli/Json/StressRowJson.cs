using Slowglow.Power.Stress;

namespace Slowglow.Cli.Json;

/// <summary>The most that a part stands of one kind; <c>rated</c>, <c>ratio</c> and <c>fit</c> are null where nothing is known.</summary>
internal sealed record StressRowJson(
    string Part,
    string Description,
    string What,
    string Unit,
    double Stands,
    double Rated,
    double Ratio,
    double Fit,
    string When
)
{
    public static StressRowJson From(StressRow r) =>
        new(r.Part, r.Description, r.What, r.Unit, r.Value, r.Rated, r.Ratio, r.Needed, r.Situation);
}
