namespace Slowglow.Sheets.Readings;

public enum MeterSaid
{
    /// <summary>A figure.</summary>
    Value,

    /// <summary>Overload: beyond the meter's range.</summary>
    Overload,

    /// <summary>More than the figure: <c>&gt; 600 V</c>.</summary>
    Above,

    /// <summary>Less than the figure: <c>&lt; 1 V</c>.</summary>
    Below,

    /// <summary>It wanders; a figure, where there is one, is about where.</summary>
    Unstable,

    /// <summary>A signal tracer hears the signal there.</summary>
    Signal,

    /// <summary>It hears it, weakly.</summary>
    WeakSignal,

    /// <summary>It hears nothing.</summary>
    NoSignal,

    /// <summary>No meter: something seen, smelt or felt.</summary>
    Look,
}
