using System.Text.Json;
using System.Text.Json.Serialization;

namespace Slowglow.Workshop.People;

/// <summary>Older shops kept a list of names alone: everybody could do everything, so they come back as owners without a PIN.</summary>
public sealed class PersonJson : JsonConverter<Person>
{
    public override Person Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.String)
        {
            return new(reader.GetString() ?? "", Role.Owner);
        }

        using var document = JsonDocument.ParseValue(ref reader);
        var person = document.RootElement;
        string Text(string name) => person.TryGetProperty(name, out var value) ? value.GetString() ?? "" : "";
        return new(Text("Name"), Enum.TryParse<Role>(Text("Role"), out var role) ? role : Role.Bench, Text("Pin"));
    }

    public override void Write(Utf8JsonWriter writer, Person value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("Name", value.Name);
        writer.WriteString("Role", value.Role.ToString());
        writer.WriteString("Pin", value.Pin);
        writer.WriteEndObject();
    }
}
