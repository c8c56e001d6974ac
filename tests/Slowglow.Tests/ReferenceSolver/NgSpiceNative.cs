using System.Runtime.InteropServices;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>The door of Debian's libngspice0, as its shared-library header declares it.</summary>
internal static unsafe partial class NgSpiceNative
{
    internal const string Library = "libngspice.so.0";

    [LibraryImport(Library, EntryPoint = "ngSpice_Init")]
    internal static partial int Init(
        delegate* unmanaged[Cdecl]<byte*, int, void*, int> print,
        delegate* unmanaged[Cdecl]<byte*, int, void*, int> status,
        delegate* unmanaged[Cdecl]<int, byte, byte, int, void*, int> exit,
        void* data,
        void* initData,
        void* background,
        void* user
    );

    [LibraryImport(Library, EntryPoint = "ngSpice_Command", StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int Command(string command);

    [LibraryImport(Library, EntryPoint = "ngSpice_Circ")]
    internal static partial int Load(byte** lines);

    [LibraryImport(Library, EntryPoint = "ngGet_Vec_Info", StringMarshalling = StringMarshalling.Utf8)]
    internal static partial VectorInfo* Vector(string name);

    [StructLayout(LayoutKind.Sequential)]
    internal struct VectorInfo
    {
        public byte* Name;
        public int Type;
        public short Flags;
        public double* Real;
        public double* Complex;
        public int Length;
    }
}
