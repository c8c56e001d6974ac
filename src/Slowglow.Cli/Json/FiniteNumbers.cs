using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Slowglow.Cli.Json;

/// <summary>Figures in base units to nine significant digits; what is not a finite number is null.</summary>
internal sealed class FiniteNumbers : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Null ? double.NaN : reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        if (double.IsFinite(value))
        {
            writer.WriteNumberValue(
                double.Parse(value.ToString("G9", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            );
        }
        else
        {
            writer.WriteNullValue();
        }
    }
}
