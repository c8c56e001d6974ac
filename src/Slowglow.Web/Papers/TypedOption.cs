namespace Slowglow.Web.Papers;

/// <summary>An option of a quote while it is being typed.</summary>
public sealed class TypedOption
{
    public string Name { get; set; } = "";
    public List<TypedLine> Lines { get; init; } = [];
}
