using System.Diagnostics;
using System.Globalization;

namespace Slowglow.Cli.Desk;

/// <summary>Says on the error stream that something takes longer than a second, and how far it is.</summary>
internal sealed class Working : IProgress<double>, IDisposable
{
    private static readonly TimeSpan FirstWord = TimeSpan.FromSeconds(1);

    private readonly TextWriter error;
    private readonly bool terminal;
    private readonly string what;
    private readonly Stopwatch elapsed = Stopwatch.StartNew();
    private readonly Timer timer;
    private readonly Lock gate = new();
    private double done = double.NaN;
    private int shown;
    private bool ended;

    public Working(Streams streams, string what)
    {
        error = streams.Error;
        terminal = streams.ErrorIsTerminal;
        this.what = what;
        var next = terminal ? TimeSpan.FromSeconds(0.25) : TimeSpan.FromSeconds(10);
        timer = new Timer(_ => Show(), null, FirstWord, next);
    }

    /// <inheritdoc/>
    public void Report(double value) => done = value;

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (gate)
        {
            ended = true;
            timer.Dispose();
            if (terminal && shown > 0)
            {
                error.Write('\r' + new string(' ', shown) + '\r');
            }
        }
    }

    private void Show()
    {
        lock (gate)
        {
            if (ended)
            {
                return;
            }

            var far = double.IsFinite(done)
                ? string.Create(CultureInfo.InvariantCulture, $"{Math.Clamp(done, 0, 1) * 100:0} %")
                : string.Create(CultureInfo.InvariantCulture, $"{elapsed.Elapsed.TotalSeconds:0} s");
            var line = $"{what}: {far}";
            if (terminal)
            {
                error.Write('\r' + line.PadRight(shown));
            }
            else
            {
                error.WriteLine(line);
            }
            shown = Math.Max(shown, line.Length);
        }
    }
}
