using Slowglow.Circuits;
using Slowglow.Sheets.Parts;

namespace Slowglow.Diagnosis.Advice;

/// <summary>How a part is proved good or bad out of circuit, for whoever points at it.</summary>
public static class PartCheck
{
    /// <param name="fault">What it is suspected of; null when it is not suspected: then an open one stands for bad.</param>
    public static string Say(Part part, Fault? fault)
    {
        var (how, good, bad) = OutOfCircuit.Check(part, fault ?? new Fault(part.Designator, "", FailureMode.Open));
        return how.Length == 0 ? $"no meter proves {part.Designator}; put a known good one in"
            : fault is null ? $"{how}; a good one shows {good}"
            : $"{how}; a good one shows {good}, with {fault} it would show {bad}";
    }
}
