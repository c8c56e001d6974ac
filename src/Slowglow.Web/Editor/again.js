// The same lines once more, as another channel: parts get the next numbers, names used in these lines alone get new ones, and what other
// lines use as well (a rail, earth, a mixing point) stays.
import { counter, knobsIn, namesIn, stands } from "./numbering.js";

export function again(view, read) {
  const { doc, selection } = view.state;
  const { first, last } = chosen(doc, selection.main);
  const text = doc.sliceString(doc.line(first).from, doc.line(last).to);
  const rest = doc.sliceString(0, doc.line(first).from) + doc.sliceString(doc.line(last).to);
  const names = new Map([...parts(text, doc.toString()), ...nets(text, parted(rest), doc.toString(), read.nets)]);
  if (names.size === 0) {
    return true;
  }
  const to = doc.line(last).to;
  const titled = nextTitle(text);
  const copy = "\n" + titled.replace(/[A-Za-z_]\w*/g, (word, at) => (isOfOther(titled, at) ? word : (names.get(word) ?? word)));
  view.dispatch({ changes: { from: to, insert: copy }, selection: { anchor: to + copy.length }, scrollIntoView: true, userEvent: "input.paste" });
  view.focus();
  return true;
}

// The marked lines; with none marked those from the last comment line, or blank one, to the caret.
function chosen(doc, range) {
  const last = doc.lineAt(range.to > range.from && range.to === doc.lineAt(range.to).from ? range.to - 1 : range.to).number;
  let first = doc.lineAt(range.from).number;
  let end = last;
  while (range.empty && end > 1 && !doc.line(end).text.trim()) {
    end--;
    first = end;
  }
  while (range.empty && first > 1 && !/^\s*(#.*)?$/.test(doc.line(first).text) && !/^\S/.test(doc.line(first - 1).text)) {
    first--;
  }
  return { first, last: end };
}

// "# channel 1" is followed by "# channel 2".
function nextTitle(text) {
  return text.replace(/^(\s*#.*?)(\d+)(?=[^\d\n]*\n)/, (_, words, number) => words + (Number(number) + 1));
}

// A pin's number or name behind the dot, or a word inside a comment.
function isOfOther(text, at) {
  const line = text.slice(text.lastIndexOf("\n", at) + 1, at);
  return line.endsWith(".") || line.includes("#");
}

function parts(text, all) {
  const next = counter(all);
  return [...text.matchAll(/^\s+([A-Za-z]+)(\d+)([A-Za-z]?)\s*:/gm)]
    .filter((m) => /^[A-Z]/.test(m[1]))
    .map((m) => [m[1] + m[2] + m[3], next(m[1]) + m[3]]);
}

function nets(text, rest, all, known) {
  const given = new Set();
  return [...new Set([...known, ...namesIn(text), ...knobsIn(text)])]
    .filter((n) => n !== "GND" && !n.startsWith("MAINS") && stands(n, text) && !stands(n, rest))
    .map((n) => {
      const [, stem, number] = /^(.*?)(\d*)$/.exec(n);
      let k = Number(number || 1) + 1;
      while (stands(stem + k, all) || given.has(stem + k)) {
        k++;
      }
      given.add(stem + k);
      return [n, stem + k];
    });
}

// Other sections may name what is copied; only other parts make it shared.
function parted(rest) {
  return /^parts\s*:.*\n((?:[ \t#].*\n?|\n)*)/m.exec(rest)?.[1] ?? "";
}
