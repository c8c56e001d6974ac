using Slowglow.Tests.ReferenceSolver;

namespace Slowglow.Benchmarks;

/// <summary>One circuit loaded in the reference solver, to be changed and solved again.</summary>
internal sealed unsafe class ReferenceSession : IDisposable
{
    public ReferenceSession(IEnumerable<string> cards)
    {
        NgSpice.Start();
        NgSpice.Load([.. cards, ".options reltol=1e-6 gmin=1e-12 temp=26.85 tnom=26.85", ".end"]);
    }

    /// <summary>Sets a resistor and finds the resting state.</summary>
    public void Solve(string resistor, double ohms)
    {
        NgSpiceNative.Command(FormattableString.Invariant($"alter {resistor} = {ohms:R}"));
        NgSpiceNative.Command("op");
    }

    public static void Say(string command) => NgSpiceNative.Command(command);

    /// <summary>Last volts of a net; NaN when the analysis gave none.</summary>
    public static double Volts(string net)
    {
        var info = NgSpiceNative.Vector(net);
        return info is null || info->Length == 0 ? double.NaN : info->Real[info->Length - 1];
    }

    /// <summary>Forgets the results so far, which would otherwise pile up.</summary>
    public static void Forget() => NgSpiceNative.Command("destroy all");

    public void Dispose()
    {
        NgSpiceNative.Command("destroy all");
        NgSpiceNative.Command("remcirc");
    }
}
