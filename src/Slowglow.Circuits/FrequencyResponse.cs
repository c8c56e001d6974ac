namespace Slowglow.Circuits;

/// <summary>Response of a channel by frequency.</summary>
/// <param name="Points">From low to high.</param>
/// <param name="ReferenceHertz">Frequency that decibels are counted from.</param>
/// <param name="Low">Lower -3 dB corner; NaN hertz when the response holds to the lowest frequency asked for.</param>
/// <param name="High">Upper -3 dB corner; NaN hertz when it holds to the highest.</param>
public sealed record FrequencyResponse(IReadOnlyList<ResponsePoint> Points, double ReferenceHertz, Corner Low, Corner High);
