namespace Slowglow.Sheets.Readings;

public enum MeterSaid
{
    /// <summary>A figure.</summary>
    Value,

    /// <summary>Overload: beyond the meter's range.</summary>
    Overload,
}
