namespace Slowglow.Diagnosis.Complaints;

/// <summary>How a channel of a world sounds beside the same channel of the healthy unit.</summary>
/// <param name="Settled">False when no figure could be had.</param>
/// <param name="DropDb">Level lost at 1 kHz, dB; negative when louder.</param>
/// <param name="BassDropDb">Level lost at 80 Hz beyond that at 1 kHz, dB.</param>
/// <param name="TrebleDropDb">Level lost at 8 kHz beyond that at 1 kHz, dB.</param>
/// <param name="Distortion">At half the healthy unit's drive for 5 %, 0 to 1.</param>
/// <param name="HealthyDistortion">The same of the healthy unit.</param>
/// <param name="HumRiseDb">Rise of the hum above the healthy hum or what can just be heard, dB.</param>
/// <param name="OffsetVolts">Change of the DC at the output, volts, absolute.</param>
internal readonly record struct Symptoms(
    bool Settled,
    double DropDb,
    double BassDropDb,
    double TrebleDropDb,
    double Distortion,
    double HealthyDistortion,
    double HumRiseDb,
    double OffsetVolts
);
