using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>
/// A pentode with what goes wrong between its electrodes and the circuit: gas, and pins without contact. Without its anode the screen
/// takes all. Ports as the pentode's.
/// </summary>
internal sealed class SocketedPentodeLaw : PentodeLaw
{
    internal enum Fault
    {
        /// <summary>0 as made; ions that reach the grid, over the anode current.</summary>
        Gas = 16,

        /// <summary>1 as made; 0 = the grid's pin makes no contact.</summary>
        GridContact,

        /// <summary>1 as made; 0 = the anode's pin makes no contact.</summary>
        AnodeContact,
    }

    public override int Constants => 19;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var contact = constants[(int)Fault.GridContact];
        var joined = constants[(int)Fault.AnodeContact];
        base.Evaluate([joined * volts[0], SocketedTriodeLaw.Grid(volts[1], contact), volts[2]], constants, currents, slopes);
        currents[0] *= joined;
        slopes[0] *= joined;
        slopes[1] *= joined * contact;
        slopes[2] *= joined;
        slopes[6] *= joined;
        slopes[7] *= contact;
        var gas = constants[(int)Fault.Gas];
        currents[1] = contact * (currents[1] - (gas * currents[0]));
        slopes[3] = -contact * gas * slopes[0];
        slopes[4] = contact * ((contact * slopes[4]) - (gas * slopes[1]));
        slopes[5] = -contact * gas * slopes[2];
    }
}
