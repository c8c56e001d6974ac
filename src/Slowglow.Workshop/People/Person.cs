using System.Text.Json.Serialization;

namespace Slowglow.Workshop.People;

/// <summary>Somebody who works here.</summary>
/// <param name="Name">As it stands in timelines.</param>
/// <param name="Pin">What <see cref="PinHash"/> made of the PIN; empty without one.</param>
[JsonConverter(typeof(PersonJson))]
public sealed record Person(string Name, Role Role, string Pin = "")
{
    public bool HasPin => Pin.Length > 0;
}
