namespace Slowglow.Sheets.Setups;

/// <summary>What is plugged into the signal inputs while readings other than levels are taken.</summary>
public enum InputState
{
    /// <summary>Nothing.</summary>
    Open,

    /// <summary>A shorting plug, in the setup's channel or in all.</summary>
    Shorted,

    /// <summary>The generator, turned down: its resistance alone, in the setup's channel or in all.</summary>
    Driven,
}
