using Slowglow.Workshop.People;

namespace Slowglow.Web.People;

/// <summary>A person while being typed.</summary>
public sealed class TypedPerson
{
    public string Name { get; set; } = "";
    public Role Role { get; set; } = Role.Owner;

    /// <summary>A new one; empty to leave it.</summary>
    public string Pin { get; set; } = "";
    public bool DropPin { get; set; }
    public bool HasPin { get; init; }

    /// <summary>As the use case takes it: null leaves it, empty takes it away.</summary>
    public string? NewPin =>
        DropPin ? ""
        : Pin.Length > 0 ? Pin
        : null;

    public static TypedPerson Of(Person person) =>
        new()
        {
            Name = person.Name,
            Role = person.Role,
            HasPin = person.HasPin,
        };
}
