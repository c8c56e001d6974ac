namespace Slowglow.Circuits;

public enum AnswerKind
{
    /// <summary>A figure.</summary>
    Value,

    /// <summary>Held by nothing: no figure can be given.</summary>
    Floating,

    /// <summary>Ohms or diode test beyond the meter: it shows overload.</summary>
    Overload,

    /// <summary>The world does not settle; no figure can be given.</summary>
    Unsettled,

    /// <summary>The question does not apply (ohms with the power on, a level without a signal path).</summary>
    NotApplicable,
}
