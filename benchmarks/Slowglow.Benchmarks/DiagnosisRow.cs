using System.Globalization;

namespace Slowglow.Benchmarks;

/// <summary>One line of the table of diagnoses. Times in seconds.</summary>
/// <param name="First">From an opened sheet to the first suspects, everything solved for the first time.</param>
/// <param name="Update">From one more reading to updated suspects, next reading included: the median of all readings of the demo job.</param>
/// <param name="Slowest">The slowest of these.</param>
internal sealed record DiagnosisRow(string Sheet, int Parts, int Faults, double First, double Update, double Slowest)
{
    public const string Heading = "sheet               parts   faults   first, ms   one reading, ms   slowest, ms";

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Sheet, -16} {Parts, 8} {Faults, 8} {First * 1e3, 11:0} {Update * 1e3, 17:0} {Slowest * 1e3, 13:0}"
        );
}
