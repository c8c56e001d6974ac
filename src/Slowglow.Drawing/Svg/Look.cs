namespace Slowglow.Drawing.Svg;

/// <summary>The drawing's style sheet.</summary>
internal static class Look
{
    /// <summary>For a drawing that is a document of its own.</summary>
    /// <param name="isTall">Prints upright instead of lying.</param>
    public static string Alone(bool isTall) =>
        $"{Rules}\n@media print {{ @page {{ size: A4 {(isTall ? "portrait" : "landscape")}; margin: 8mm; }} }}";

    /// <summary>Every rule is bound to the drawing: in a page they count for all of it.</summary>
    public const string Rules = """
        .slowglow-drawing {
          --ink: var(--drawing-ink, #1d1b18); --paper: var(--drawing-paper, #fbfaf6); --faint: var(--drawing-faint, #5c574e);
          --good: var(--drawing-good, #1d6b34); --bad: var(--drawing-bad, #a3231b); --suspect: var(--drawing-suspect, #c9770c);
          --next: var(--drawing-next, #17589c);
          background: var(--paper); color: var(--ink);
          font-family: "DejaVu Sans", Verdana, "Segoe UI", sans-serif; font-size: 10px;
        }
        @media (prefers-color-scheme: dark) {
          .slowglow-drawing {
            --ink: var(--drawing-ink, #ece7dc); --paper: var(--drawing-paper, #17181a); --faint: var(--drawing-faint, #a9a397);
            --good: var(--drawing-good, #7ccf93); --bad: var(--drawing-bad, #ff9d92); --suspect: var(--drawing-suspect, #f0a845);
            --next: var(--drawing-next, #8dc0ff);
          }
        }
        @media print {
          .slowglow-drawing {
            --ink: #000; --paper: #fff; --faint: #444; --good: #000; --bad: #000; --suspect: #777; --next: #000;
            width: 100%; height: auto; max-height: 98vh;
          }
        }
        .slowglow-drawing .sheet { fill: var(--paper); }
        .slowglow-drawing .wire, .slowglow-drawing .lead { fill: none; stroke: var(--ink); stroke-width: 1.2; stroke-linecap: square; }
        .slowglow-drawing .rail { stroke-width: 1.9; }
        .slowglow-drawing .dot { fill: var(--ink); }
        .slowglow-drawing .stroke { fill: none; stroke: var(--ink); stroke-width: 1.4; stroke-linejoin: round; stroke-linecap: round; }
        .slowglow-drawing .paper { fill: var(--paper); }
        .slowglow-drawing .solid { fill: var(--ink); }
        .slowglow-drawing .pin { fill: none; }
        .slowglow-drawing text { fill: var(--ink); font-family: "DejaVu Sans", Verdana, "Segoe UI", sans-serif; }
        .slowglow-drawing .name { font-weight: 700; }
        .slowglow-drawing .value { fill: var(--ink); }
        .slowglow-drawing .number, .slowglow-drawing .plus { font-size: 8px; fill: var(--faint); }
        .slowglow-drawing .inside { font-size: 9px; }
        .slowglow-drawing .tagname { font-size: 10px; font-weight: 600; }
        .slowglow-drawing .railname { font-weight: 700; }
        .slowglow-drawing .figure { font-size: 9px; fill: var(--faint); }
        .slowglow-drawing .netname { font-size: 9px; font-style: italic; fill: var(--ink); }
        .slowglow-drawing .measured { font-size: 9px; font-weight: 700; }
        .slowglow-drawing .in-band { fill: var(--good); }
        .slowglow-drawing .high, .slowglow-drawing .low, .slowglow-drawing .dead { fill: var(--bad); }
        .slowglow-drawing .next { fill: var(--next); font-size: 9px; font-weight: 700; }
        .slowglow-drawing .spot { fill: var(--paper); stroke: var(--ink); stroke-width: 1.2; }
        .slowglow-drawing .leader { fill: none; stroke: var(--next); stroke-width: 0.8; stroke-dasharray: 2 2; }
        .slowglow-drawing .ring { fill: none; stroke: var(--next); stroke-width: 2.2; }
        .slowglow-drawing .shade { fill: var(--suspect); stroke: var(--suspect); }
        .slowglow-drawing .part, .slowglow-drawing .point { outline: none; cursor: pointer; }
        .slowglow-drawing .hold { fill: transparent; stroke: none; }
        .slowglow-drawing .part:focus > .hold, .slowglow-drawing .part:hover > .hold, .slowglow-drawing .point:focus > .hold, .slowglow-drawing .point:hover > .hold { stroke: var(--next); stroke-width: 1.5; }
        .slowglow-drawing .title { font-size: 15px; font-weight: 700; }
        .slowglow-drawing .note { font-size: 10px; fill: var(--faint); }
        """;
}
