namespace Slowglow.Workshop.Words;

/// <summary>Which of two names of a thing the shop uses on its screens and papers. Both are understood on input.</summary>
public enum TradeWords
{
    /// <summary>valve, anode, earth, HT.</summary>
    Valve,

    /// <summary>tube, plate, ground, B+.</summary>
    Tube,
}
