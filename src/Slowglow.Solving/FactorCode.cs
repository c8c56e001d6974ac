using System.Reflection;
using System.Reflection.Emit;
using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Elimination and substitution of one pattern written out as straight-line machine code: the same operations in the same order as the
/// loops of <see cref="LaneFactors"/>, so that the results are the same to the last bit, without fetching an index for each.
/// </summary>
internal sealed class FactorCode
{
    /// <summary>Operations in one method; beyond some 15 KB of code the compiler stops optimising.</summary>
    private const int MostOperations = 220;

    internal unsafe delegate void Piece(Lane* values, Lane* inverse, Lane* x);

    private static readonly MethodInfo Fma = typeof(Vector256).GetMethod(
        nameof(Vector256.FusedMultiplyAdd),
        [typeof(Lane), typeof(Lane), typeof(Lane)]
    )!;
    private static readonly MethodInfo Times = Operator("op_Multiply");
    private static readonly MethodInfo Over = Operator("op_Division");
    private static readonly MethodInfo Minus = typeof(Lane).GetMethod("op_UnaryNegation", [typeof(Lane)])!;
    private static readonly MethodInfo One = typeof(Lane).GetProperty(nameof(Lane.One))!.GetMethod!;

    private readonly List<Piece> pieces = [];
    private ILGenerator il = null!;
    private DynamicMethod method = null!;
    private LocalBuilder factor = null!;
    private int operations;

    /// <summary>Both halves of the work on one pattern.</summary>
    internal sealed record Pair(FactorCode Factor, FactorCode Solve);

    private FactorCode() { }

    public static FactorCode Factor(SparsePattern pattern)
    {
        var code = new FactorCode();
        code.Begin();
        for (var k = 0; k < pattern.Size; k++)
        {
            code.EmitPivot(pattern, k);
        }

        code.End();
        return code;
    }

    public static FactorCode Solve(SparsePattern pattern)
    {
        var code = new FactorCode();
        code.Begin();
        for (var k = 0; k < pattern.Size; k++)
        {
            code.EmitForward(pattern, k);
        }

        for (var k = pattern.Size - 1; k >= 0; k--)
        {
            code.EmitBack(pattern, k);
        }

        code.End();
        return code;
    }

    public unsafe void Run(Lane* values, Lane* inverse, Lane* x)
    {
        foreach (var piece in pieces)
        {
            piece(values, inverse, x);
        }
    }

    private static MethodInfo Operator(string name) => typeof(Lane).GetMethod(name, [typeof(Lane), typeof(Lane)])!;

    private void Begin()
    {
        method = new DynamicMethod("Piece", null, [typeof(Lane*), typeof(Lane*), typeof(Lane*)], typeof(FactorCode).Module, true);
        il = method.GetILGenerator(16 * 1024);
        factor = il.DeclareLocal(typeof(Lane));
        operations = 0;
    }

    private void End()
    {
        il.Emit(OpCodes.Ret);
        pieces.Add(method.CreateDelegate<Piece>());
    }

    private void Count()
    {
        if (++operations >= MostOperations)
        {
            End();
            Begin();
        }
    }

    private void Address(int argument, int index)
    {
        il.Emit(OpCodes.Ldarg, (short)argument);
        il.Emit(OpCodes.Ldc_I4, index * 32);
        il.Emit(OpCodes.Conv_I);
        il.Emit(OpCodes.Add);
    }

    private void Load(int argument, int index)
    {
        Address(argument, index);
        il.Emit(OpCodes.Ldobj, typeof(Lane));
    }

    private void Store() => il.Emit(OpCodes.Stobj, typeof(Lane));

    private void EmitPivot(SparsePattern pattern, int k)
    {
        Address(1, k);
        il.Emit(OpCodes.Call, One);
        Load(0, pattern.Pivot[k]);
        il.Emit(OpCodes.Call, Over);
        Store();
        Count();
        var u0 = pattern.UpperStart[k];
        var count = pattern.UpperStart[k + 1] - u0;
        for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
        {
            EmitRow(pattern, k, n);
            for (var m = 0; m < count; m++)
            {
                var target = pattern.Target[pattern.TargetStart[n] + m];
                Address(0, target);
                il.Emit(OpCodes.Ldloc, factor);
                Load(0, pattern.UpperPosition[u0 + m]);
                Load(0, target);
                il.Emit(OpCodes.Call, Fma);
                Store();
                operations++;
            }

            Count();
        }
    }

    /// <summary>The multiplier of a row, kept in the matrix and, negative, at hand.</summary>
    private void EmitRow(SparsePattern pattern, int k, int n)
    {
        Load(0, pattern.LowerPosition[n]);
        Load(1, k);
        il.Emit(OpCodes.Call, Times);
        il.Emit(OpCodes.Stloc, factor);
        Address(0, pattern.LowerPosition[n]);
        il.Emit(OpCodes.Ldloc, factor);
        Store();
        il.Emit(OpCodes.Ldloc, factor);
        il.Emit(OpCodes.Call, Minus);
        il.Emit(OpCodes.Stloc, factor);
    }

    private void EmitForward(SparsePattern pattern, int k)
    {
        Load(2, pattern.Order[k]);
        il.Emit(OpCodes.Call, Minus);
        il.Emit(OpCodes.Stloc, factor);
        for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
        {
            Address(2, pattern.LowerRow[n]);
            Load(0, pattern.LowerPosition[n]);
            il.Emit(OpCodes.Ldloc, factor);
            Load(2, pattern.LowerRow[n]);
            il.Emit(OpCodes.Call, Fma);
            Store();
            operations++;
        }

        Count();
    }

    private void EmitBack(SparsePattern pattern, int k)
    {
        Load(2, pattern.Order[k]);
        il.Emit(OpCodes.Stloc, factor);
        for (var n = pattern.UpperStart[k]; n < pattern.UpperStart[k + 1]; n++)
        {
            Load(0, pattern.UpperPosition[n]);
            Load(2, pattern.UpperColumn[n]);
            il.Emit(OpCodes.Call, Minus);
            il.Emit(OpCodes.Ldloc, factor);
            il.Emit(OpCodes.Call, Fma);
            il.Emit(OpCodes.Stloc, factor);
            operations++;
        }

        Address(2, pattern.Order[k]);
        il.Emit(OpCodes.Ldloc, factor);
        Load(1, k);
        il.Emit(OpCodes.Call, Times);
        Store();
        Count();
    }
}
