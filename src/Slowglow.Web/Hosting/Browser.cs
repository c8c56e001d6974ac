using System.ComponentModel;
using System.Diagnostics;

namespace Slowglow.Web.Hosting;

/// <summary>The person's own web browser.</summary>
internal static class Browser
{
    /// <summary>Opens a page. Where there is no browser nothing happens: the address has been printed.</summary>
    public static void Open(string address)
    {
        try
        {
            using var started = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception e) when (e is Win32Exception or PlatformNotSupportedException or FileNotFoundException)
        {
            // A bench machine without a desktop: the address is all that is needed.
        }
    }
}
