using Slowglow.Circuits.Models.Contact;
using Slowglow.Circuits.Solved;

namespace Slowglow.Circuits;

/// <summary>
/// One solved world, open to every question that is not a meter's: response, impedance, currents, what clips first, harmonics, hum by cause,
/// noise, stability, overload. Answers are null or empty when the world does not settle, has no such path, or has its power off.
/// Thread-safe.
/// </summary>
public sealed class World
{
    private readonly AskedWorld asked;

    internal World(AskedWorld asked) => this.asked = asked;

    /// <summary>False when no question has an answer.</summary>
    public bool Settled => asked.State.Settled;

    /// <summary>Response of a channel (null = the setup's, else the first) from the generator to the output, small signals.</summary>
    /// <param name="from">Lowest frequency, hertz, above 0.</param>
    /// <param name="to">Highest, hertz.</param>
    /// <param name="perDecade">Points in a decade, at least 1.</param>
    /// <param name="referenceHertz">Frequency that decibels are counted from.</param>
    public FrequencyResponse? Response(
        double from,
        double to,
        int perDecade,
        string? channel = null,
        double referenceHertz = SignalFollower.Hertz
    ) => Response(ResponseQuestion.Decades(from, to, perDecade), channel, referenceHertz);

    /// <summary>The same at chosen frequencies, hertz, from low to high; corners are looked for between them.</summary>
    public FrequencyResponse? Response(
        IReadOnlyList<double> hertz,
        string? channel = null,
        double referenceHertz = SignalFollower.Hertz
    ) => asked.PathOf(channel) is { } path ? new ResponseQuestion(asked, path, referenceHertz).Ask(hertz) : null;

    /// <summary>What a source sees at the input, at each frequency (hertz).</summary>
    public IReadOnlyList<ImpedancePoint> InputImpedance(IReadOnlyList<double> hertz, string? channel = null) =>
        asked.PathOf(channel) is { } path ? new ImpedanceQuestion(asked, path).Input(hertz) : [];

    /// <summary>What a load sees at the output, at each frequency (hertz); the sheet's load and loudspeaker are taken off.</summary>
    public IReadOnlyList<ImpedancePoint> OutputImpedance(IReadOnlyList<double> hertz, string? channel = null) =>
        asked.PathOf(channel) is { } path ? new ImpedanceQuestion(asked, path).Output(hertz) : [];

    /// <summary>Current in every section of every winding over the mains cycle.</summary>
    public IReadOnlyList<WindingCurrent> WindingCurrents() => Settled ? new CurrentsQuestion(asked).Windings() : [];

    /// <summary>Ripple current of every capacitor over the mains cycle.</summary>
    public IReadOnlyList<CapacitorCurrent> CapacitorCurrents() => Settled ? new CurrentsQuestion(asked).Capacitors() : [];

    /// <summary>
    /// Resistance that the capacitors named see, as ports: [a, b] are the volts across a for one ampere into b, all capacitors open.
    /// Junctions are as they stand in <paramref name="charged"/>: blocked by what the capacitors still hold. Null when either world does not settle.
    /// </summary>
    public double[,]? PortResistance(IReadOnlyList<string> capacitors, World charged) =>
        Settled && charged.Settled ? new PortsQuestion(asked).Resistance(capacitors, charged.asked.State.Mean) : null;

    /// <summary>A 1 kHz signal at each generator level (volts rms, open circuit) taken apart at the output; null where it does not settle.</summary>
    public IReadOnlyList<HarmonicContent?> Harmonics(
        IReadOnlyList<double> generatorVolts,
        string? channel = null,
        CancellationToken cancel = default
    ) => asked.PathOf(channel) is { } path ? HarmonicsQuestion.Ask(asked, path, generatorVolts, cancel) : [];

    /// <summary>What ends the clean range, in the order in which it sets in; empty when the channel never reaches 5 % distortion.</summary>
    public IReadOnlyList<ClippingCause> ClipsFirst(string? channel = null, CancellationToken cancel = default) =>
        asked.PathOf(channel) is { } path ? new ClippingQuestion(asked, path, cancel).Ask() : [];

    /// <summary>
    /// Largest undistorted signal at each frequency (hertz): what clips at 1 kHz, or less where an op-amp cannot follow so fast.
    /// </summary>
    public IReadOnlyList<HeadroomPoint> Headroom(
        IReadOnlyList<double> hertz,
        string? channel = null,
        CancellationToken cancel = default
    )
    {
        if (asked.PathOf(channel) is not { } path)
        {
            return [];
        }

        var clean = asked.Limits.Of(asked.State, path, cancel).OutputVolts;
        var slew = new SlewQuestion(asked, path);
        return [.. hertz.Select(f => slew.Headroom(f, clean))];
    }

    /// <summary>The lowest frequency at which the clean output is more than an op-amp can follow; null where none does below 1 MHz.</summary>
    public SlewLimit? FullOutput(string? channel = null, CancellationToken cancel = default) =>
        asked.PathOf(channel) is { } path
            ? new SlewQuestion(asked, path).FullOutput(asked.Limits.Of(asked.State, path, cancel).OutputVolts)
            : null;

    /// <summary>True while a relay has pulled in, false while it has not; null for one without contacts or told by the setup.</summary>
    public bool? HasPulledIn(string relay) =>
        asked
            .Circuit.Models.OfType<ContactModel>()
            .FirstOrDefault(m => m.Follows && m.Of == relay)
            ?.HasPulledIn(asked.State.Slots);

    /// <summary>Hum at the output of a channel by cause.</summary>
    public HumSplit? Hum(string? channel = null) =>
        asked.PathOf(channel) is { } path && asked.Circuit.Fixtures.HasMains ? new HumQuestion(asked, path).Ask() : null;

    /// <summary>Noise at the output of a channel over a band, hertz.</summary>
    public NoiseFloor? Noise(double from = 20, double to = 20e3, string? channel = null) =>
        asked.PathOf(channel) is { } path ? new NoiseQuestion(asked, path).Ask(from, to) : null;

    /// <summary>Margins of every feedback loop whose gain passes one, most worrying first; the channel's generator and load are connected.</summary>
    public IReadOnlyList<StabilityMargin> Stability(string? channel = null) =>
        Powered ? StabilityQuestion.Ask(asked, asked.PathOf(channel)) : [];

    /// <summary>Parts over their ratings, worst first.</summary>
    public IReadOnlyList<OverRating> OverRatings() => Settled ? OverRatingQuestion.Ask(asked) : [];

    /// <summary>Further states in which the circuit can rest; the figures of every other question hold for the state it was found in.</summary>
    public IReadOnlyList<OtherState> OtherStates(CancellationToken cancel = default) =>
        Powered ? new StatesQuestion(asked).Ask(cancel) : [];

    /// <summary>False when the state that the figures hold for is a balance that falls over by itself.</summary>
    public bool Stands(CancellationToken cancel = default) => !Powered || new StatesQuestion(asked).Stands(cancel);

    /// <summary>What every part stands at full signal on a channel (null = the setup's, else the first); null when nothing clean passes.</summary>
    public FullSignal? FullSignal(string? channel = null, CancellationToken cancel = default) =>
        asked.PathOf(channel) is { } path ? new FullSignalQuestion(asked, path).Ask(cancel) : null;

    /// <summary>Thermal loops of class AB output pairs, the hottest first.</summary>
    public IReadOnlyList<ThermalLoop> ThermalLoops() => Powered ? new ThermalQuestion(asked).Ask() : [];

    private bool Powered => Settled && !asked.State.Setup.PowerOff;
}
