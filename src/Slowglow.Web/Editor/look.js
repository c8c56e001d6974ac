// Colours of the text, from the page's own.
import { EditorView } from "@codemirror/view";
import { HighlightStyle, syntaxHighlighting } from "@codemirror/language";
import { tags } from "@lezer/highlight";

const colours = HighlightStyle.define([
  { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: "var(--low)", fontWeight: "600" },
  { tag: [tags.comment, tags.lineComment], color: "var(--good)", fontStyle: "italic" },
  { tag: [tags.string, tags.content], color: "var(--ink)" },
  { tag: [tags.separator, tags.punctuation, tags.brace, tags.squareBracket], color: "var(--ink-2)" },
]);

const face = EditorView.theme({
  "&": { height: "100%", color: "var(--ink)", backgroundColor: "var(--paper-2)", fontSize: "0.92rem" },
  "&.cm-focused": { outline: "2px solid var(--focus)", outlineOffset: "-2px" },
  ".cm-scroller": { fontFamily: "var(--figures)", lineHeight: "1.45" },
  ".cm-content": { caretColor: "var(--ink)" },
  "&.cm-focused .cm-cursor": { borderLeftColor: "var(--ink)" },
  ".cm-gutters": { backgroundColor: "var(--paper)", color: "var(--ink-2)", borderRight: "1px solid var(--rule)" },
  ".cm-activeLine, .cm-activeLineGutter": { backgroundColor: "color-mix(in srgb, var(--glow-soft) 35%, transparent)" },
  "&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground, .cm-selectionBackground": { backgroundColor: "var(--glow-soft)" },
  ".cm-tooltip": { backgroundColor: "var(--paper)", color: "var(--ink)", border: "1px solid var(--rule-strong)", borderRadius: "6px" },
  ".cm-tooltip-autocomplete > ul > li[aria-selected]": { backgroundColor: "var(--button)", color: "var(--on-glow)" },
  ".cm-tooltip-autocomplete > ul:not(:has([aria-selected])) > li:first-child": { boxShadow: "inset 3px 0 0 var(--button)", fontWeight: "600" },
  ".cm-completionDetail": { color: "var(--ink-2)", fontStyle: "normal", marginLeft: "1em" },
  ".cm-tooltip-autocomplete > ul > li[aria-selected] .cm-completionDetail": { color: "var(--on-glow)" },
  ".cm-diagnostic": { borderLeftWidth: "5px", maxWidth: "34rem" },
  ".cm-diagnosticAction": { backgroundColor: "var(--button)", color: "var(--on-glow)", borderRadius: "4px", padding: "2px 8px" },
  ".cm-lintRange-error": { backgroundImage: "none", textDecoration: "underline wavy var(--high-fill)" },
  ".cm-lintRange-warning": { backgroundImage: "none", textDecoration: "underline wavy var(--caution-edge)" },
  ".cm-lintRange-info": { backgroundImage: "none", textDecoration: "underline dotted var(--low-fill)" },
  ".cm-snippetField": { backgroundColor: "var(--glow-soft)" },
  ".cm-panels": { backgroundColor: "var(--paper)", color: "var(--ink)" },
});

export const look = [face, syntaxHighlighting(colours)];
