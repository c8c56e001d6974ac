using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>A reading that somebody wants to take.</summary>
internal sealed record Choice(Probe Probe, Setup Setup);
