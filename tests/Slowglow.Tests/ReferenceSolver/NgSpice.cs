using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// The general-purpose reference solver. The library keeps its state in globals, so there is one per process, behind one lock; its return
/// codes stay 0 on errors, so an analysis counts as done only when the vectors asked for are there and reach the end.
/// </summary>
internal static unsafe class NgSpice
{
    /// <summary>How a resting state is looked for: Newton, conductance steps, source steps, step and length of a transient, ramp.</summary>
    private const string Plain = "optran 1 0 0 0 0 0";
    private const string Usual = "optran 1 1 1 100n 10u 0";
    private static readonly Lock Gate = new();
    private static readonly StringBuilder Said = new();
    private static bool ready;

    /// <summary>Runs one analysis of one deck and returns the named vectors. Complex vectors come as magnitudes.</summary>
    /// <param name="mostSteps">Time steps after which it gives up: it can otherwise creep for hours.</param>
    /// <param name="plainly">
    /// A resting state by Newton alone from where it starts: without it the library goes on to steps and transients of its own, for many seconds.
    /// </param>
    /// <exception cref="InvalidOperationException">The analysis failed; the text holds what the library said.</exception>
    public static Dictionary<string, double[]> Run(
        IReadOnlyList<string> deck,
        string analysis,
        IReadOnlyList<string> wanted,
        int mostSteps = 20000,
        bool plainly = false
    )
    {
        lock (Gate)
        {
            Start();
            Said.Clear();
            Load(deck);
            NgSpiceNative.Command(plainly ? Plain : Usual);
            NgSpiceNative.Command(FormattableString.Invariant($"stop after {mostSteps}"));
            NgSpiceNative.Command(analysis);
            try
            {
                return wanted.ToDictionary(name => name, name => Vector(name, analysis));
            }
            finally
            {
                NgSpiceNative.Command("delete all");
                NgSpiceNative.Command("destroy all");
                NgSpiceNative.Command("remcirc");
            }
        }
    }

    private static double[] Vector(string name, string analysis)
    {
        var info = NgSpiceNative.Vector(name);
        if (info is null || info->Length == 0)
        {
            throw new InvalidOperationException($"The reference solver gave no '{name}' for '{analysis}':\n{Tail()}");
        }

        var values = new double[info->Length];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = info->Real is not null ? info->Real[i] : double.Hypot(info->Complex[2 * i], info->Complex[(2 * i) + 1]);
        }

        return values;
    }

    /// <summary>What the library printed last, for messages.</summary>
    public static string Tail() => Said.Length > 3000 ? Said.ToString(Said.Length - 3000, 3000) : Said.ToString();

    internal static void Start()
    {
        if (ready)
        {
            return;
        }

        if (!NativeLibrary.TryLoad(NgSpiceNative.Library, out _))
        {
            throw new InvalidOperationException(
                "The reference solver is missing: install Debian's package libngspice0 (./test.sh does) and run the tests again."
            );
        }

        NgSpiceNative.Init(&Print, &Ignore, &Exit, null, null, null, null);
        ready = true;
    }

    internal static void Load(IReadOnlyList<string> deck)
    {
        var lines = new nint[deck.Count + 1];
        for (var i = 0; i < deck.Count; i++)
        {
            lines[i] = Marshal.StringToCoTaskMemUTF8(deck[i]);
        }

        fixed (nint* first = lines)
        {
            NgSpiceNative.Load((byte**)first);
        }

        foreach (var line in lines)
        {
            Marshal.FreeCoTaskMem(line);
        }
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Print(byte* text, int id, void* user)
    {
        Said.AppendLine(Marshal.PtrToStringUTF8((nint)text));
        return 0;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Ignore(byte* text, int id, void* user) => 0;

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Exit(int status, byte immediate, byte onQuit, int id, void* user)
    {
        Said.AppendLine("The library asked to end the program.");
        return 0;
    }
}
