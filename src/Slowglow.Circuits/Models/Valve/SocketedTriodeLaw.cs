using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>A triode with what goes wrong between its electrodes and the circuit: gas, and a grid's pin without contact. Ports as the triode's.</summary>
internal sealed class SocketedTriodeLaw : TriodeLaw
{
    internal enum Fault
    {
        /// <summary>0 as made; ions that reach the grid, over the anode current.</summary>
        Gas = 10,

        /// <summary>1 as made; 0 = the grid's pin makes no contact.</summary>
        GridContact,
    }

    /// <summary>Where a grid comes to rest that nothing is joined to, volts (common practice, no source).</summary>
    private const double FreeGridVolts = -0.5;

    public override int Constants => 12;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var contact = constants[(int)Fault.GridContact];
        base.Evaluate([volts[0], Grid(volts[1], contact)], constants, currents, slopes);
        var gas = constants[(int)Fault.Gas];
        currents[1] = contact * (currents[1] - (gas * currents[0]));
        slopes[1] *= contact;
        slopes[2] = -contact * gas * slopes[0];
        slopes[3] = contact * ((contact * slopes[3]) - (gas * slopes[1]));
    }

    /// <summary>Volts of the grid itself, behind its pin.</summary>
    internal static Lane Grid(Lane pin, Lane contact) => (contact * pin) + ((Lanes.One - contact) * FreeGridVolts);
}
