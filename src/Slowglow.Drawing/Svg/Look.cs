namespace Slowglow.Drawing.Svg;

/// <summary>The drawing's style sheet. A page that embeds the drawing may set the --drawing-… properties.</summary>
internal static class Look
{
    public const string Css = """
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
          @page { size: A4 landscape; margin: 10mm; }
        }
        .sheet { fill: var(--paper); }
        .wire, .lead { fill: none; stroke: var(--ink); stroke-width: 1.2; stroke-linecap: square; }
        .rail { stroke-width: 1.9; }
        .dot { fill: var(--ink); }
        .stroke { fill: none; stroke: var(--ink); stroke-width: 1.4; stroke-linejoin: round; stroke-linecap: round; }
        .paper { fill: var(--paper); }
        .solid { fill: var(--ink); }
        .pin { fill: none; }
        text { fill: var(--ink); }
        .name { font-weight: 700; }
        .value { fill: var(--ink); }
        .number, .plus { font-size: 8px; fill: var(--faint); }
        .inside { font-size: 9px; }
        .tagname { font-size: 10px; font-weight: 600; }
        .railname { font-weight: 700; }
        .figure { font-size: 9px; fill: var(--faint); }
        .netname { font-size: 9px; font-style: italic; fill: var(--ink); }
        .measured { font-size: 9px; font-weight: 700; }
        .in-band { fill: var(--good); }
        .high, .low, .dead { fill: var(--bad); }
        .next { fill: var(--next); font-size: 9px; font-weight: 700; }
        .spot { fill: var(--paper); stroke: var(--ink); stroke-width: 1.2; }
        .leader { fill: none; stroke: var(--next); stroke-width: 0.8; stroke-dasharray: 2 2; }
        .ring { fill: none; stroke: var(--next); stroke-width: 2.2; }
        .shade { fill: var(--suspect); stroke: var(--suspect); }
        .part, .point { outline: none; cursor: pointer; }
        .hold { fill: transparent; stroke: none; }
        .part:focus > .hold, .part:hover > .hold, .point:focus > .hold, .point:hover > .hold { stroke: var(--next); stroke-width: 1.5; }
        .title { font-size: 15px; font-weight: 700; }
        .note { font-size: 10px; fill: var(--faint); }
        """;
}
