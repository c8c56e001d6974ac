using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>A wire between browser and bench program that can be cut: what is open breaks off, and nothing new gets through until it is mended.</summary>
internal sealed class CuttableWire : IAsyncDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly ConcurrentDictionary<TcpClient, bool> open = [];
    private readonly CancellationTokenSource over = new();
    private readonly int to;
    private readonly Task accepting;
    private volatile bool isCut;

    private CuttableWire(int to)
    {
        this.to = to;
        listener.Start();
        accepting = AcceptAsync();
    }

    public string Url => $"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}";

    public static CuttableWire To(string url) => new(new Uri(url).Port);

    public void Cut()
    {
        isCut = true;
        foreach (var end in open.Keys)
        {
            end.Close();
        }
    }

    public void Mend() => isCut = false;

    public async ValueTask DisposeAsync()
    {
        Cut();
        await over.CancelAsync();
        listener.Stop();
        await accepting;
        over.Dispose();
    }

    private async Task AcceptAsync()
    {
        while (!over.IsCancellationRequested)
        {
            try
            {
                _ = CarryAsync(await listener.AcceptTcpClientAsync(over.Token));
            }
            catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    private async Task CarryAsync(TcpClient near)
    {
        using (near)
        using (var far = new TcpClient())
        {
            if (isCut)
            {
                return;
            }

            (open[near], open[far]) = (true, true);
            try
            {
                await far.ConnectAsync(IPAddress.Loopback, to, over.Token);
                var (a, b) = (near.GetStream(), far.GetStream());
                await Task.WhenAny(a.CopyToAsync(b, over.Token), b.CopyToAsync(a, over.Token));
            }
            catch (Exception e)
                when (e
                        is IOException
                            or SocketException
                            or ObjectDisposedException
                            or OperationCanceledException
                            or InvalidOperationException
                )
            {
                // That is what being cut is like.
            }

            open.TryRemove(near, out _);
            open.TryRemove(far, out _);
        }
    }
}
