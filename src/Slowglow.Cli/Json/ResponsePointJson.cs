namespace Slowglow.Cli.Json;

/// <summary>Level in volts rms and decibels, phase in degrees; sigma is one standard deviation in decibels.</summary>
internal sealed record ResponsePointJson(double Frequency, double Level, double Decibels, double Phase, double Sigma);
