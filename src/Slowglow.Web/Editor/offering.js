// What fits at the caret: kinds, type numbers with their pins, nets in use, pins still free. All of it by the reader's own tables.
import { autocompletion, snippetCompletion, snippet, startCompletion } from "@codemirror/autocomplete";

export class Offering {
  constructor(words, remarks) {
    Object.assign(this, { words, remarks });
  }

  extension() {
    return autocompletion({ override: [(c) => this.#pins(c), (c) => this.#ends(c), (c) => this.#what(c), (c) => this.#start(c)], maxRenderedOptions: 40 });
  }

  // V1. : its pins, those that nothing is on first.
  #pins(context) {
    const typed = context.matchBefore(/[A-Za-z]+\d+[A-Za-z]?\.[\w+-]*/);
    const name = typed?.text.split(".")[0];
    const part = name && this.remarks.read.parts.find((p) => p.name === name);
    if (!part) {
      return null;
    }
    return {
      from: typed.from + name.length + 1,
      options: part.pins.map((p) => ({
        label: p.number,
        detail: [p.electrode, p.isFree ? "free" : `on ${p.net}`].filter(Boolean).join(", "),
        boost: p.isFree ? 50 : 0,
        type: "property",
      })),
    };
  }

  // After the ratings, beside an arrow, after a pin's equals sign: nets and parts.
  #ends(context) {
    const line = context.state.doc.lineAt(context.pos);
    const before = context.state.sliceDoc(line.from, context.pos);
    const word = /[\w.+-]*$/.exec(before)[0];
    const end = /(->\s*|=\s*|\b(in|out):\s*)[\w.+-]*$/.test(before) || /:\s+\S+(\s+\S+)*\s+[\w.+-]*$/.test(before);
    if (!end || (word.length === 0 && !context.explicit && !/(->\s+|=)$/.test(before))) {
      return null;
    }
    const { nets, parts } = this.remarks.read;
    const all = [...new Set(["GND", ...nets])].map((n) => ({ label: n, type: "variable", detail: "net", boost: 10 }));
    const owners = parts.filter((p) => p.pins.length > 2).map((p) => ({
      label: p.name,
      apply: (view, c, from, to) => {
        view.dispatch({ changes: { from, to, insert: `${p.name}.` }, selection: { anchor: from + p.name.length + 1 } });
        startCompletion(view);
      },
      detail: p.what,
      type: "class",
    }));
    return { from: context.pos - word.length, options: [...all, ...owners], validFor: /^[\w+-]*$/ };
  }

  // R1: |  what it is.
  #what(context) {
    const before = context.matchBefore(/^\s+[A-Za-z]+\d+[A-Za-z]?:\s+(like:?\s*)?[\w-]*/);
    if (!before) {
      return null;
    }
    const word = /[\w-]*$/.exec(before.text)[0];
    if (word.length === 0 && !context.explicit) {
      return null;
    }
    const kinds = this.words.kinds.flatMap((k) => k.words.map((w) => ({ label: w, detail: k.name, type: "keyword" })));
    const devices = this.words.devices.flatMap((d) =>
      [d.type, ...d.alsoCalled].map((t) => ({ label: t, detail: d.kind, info: `${d.type}: ${d.pins}`, type: "class" })),
    );
    return { from: context.pos - word.length, options: [...devices, ...kinds], validFor: /^[\w-]*$/ };
  }

  // At the beginning of a line: sections, the next designator of each letter, stages.
  #start(context) {
    const before = context.matchBefore(/^\s*[A-Za-z]*/);
    if (!before || context.state.doc.lineAt(context.pos).from !== before.from) {
      return null;
    }
    const word = /[A-Za-z]*$/.exec(before.text)[0];
    if (word.length === 0 && !context.explicit) {
      return null;
    }
    const from = context.pos - word.length;
    if (from === before.from) {
      return { from, options: [...this.words.sections.map((s) => ({ label: s, apply: `${s}: `, type: "keyword" })), ...this.stages(context.state, "  ")] };
    }
    const text = context.state.doc.toString();
    const letters = this.words.kinds.map((k) => ({ letter: k.letters[0], name: k.name })).filter((k) => k.letter);
    const numbers = letters.map((k) => {
      const next = `${k.letter}${nextNumber(text, k.letter)}`;
      return { label: next, apply: `${next}: `, detail: k.name, type: "variable", boost: 20 };
    });
    return { from, options: [...numbers, ...this.stages(context.state, "")] };
  }

  stages(state, indent) {
    return this.words.stages.map((s) => snippetCompletion(this.lines(state, s, indent), { label: s.name, detail: "stage", type: "function" }));
  }

  lines(state, stage, indent) {
    const lines = stage.lines.replace(/\s+$/, "").split("\n").map((l) => l.replace(/^ {2}/, indent));
    return renumbered(state.doc.toString(), lines.join("\n"));
  }

  // Puts a stage in below the line of the caret, and not into the middle of a transformer; at the end of the parts when the caret is not among them.
  put(view, stage) {
    if (!partsOf(view.state.doc)) {
      const end = view.state.doc.length;
      view.dispatch({ changes: { from: end, insert: `${view.state.doc.line(view.state.doc.lines).text ? "\n" : ""}parts:` } });
    }
    const doc = view.state.doc;
    const parts = partsOf(doc);
    let line = doc.lineAt(view.state.selection.main.head);
    if (line.number < parts.first || line.number > parts.last) {
      line = doc.line(parts.last);
    }
    while (line.number < doc.lines && /^\s{3,}\S/.test(doc.line(line.number + 1).text)) {
      line = doc.line(line.number + 1);
    }
    view.dispatch({ changes: { from: line.to, insert: "\n" } });
    const at = line.to + 1;
    snippet(`  # ${stage.name}\n${this.lines(view.state, stage, "  ")}`)(view, null, at, at);
    view.focus();
  }
}

// Numbers of the line that opens the parts and of the last that belongs to them; null in a sheet that has none yet.
function partsOf(doc) {
  let first = 0;
  let last = 0;
  for (let n = 1; n <= doc.lines; n++) {
    const text = doc.line(n).text;
    if (/^parts\s*:/.test(text)) {
      first = last = n;
    } else if (first && /^[^\s#]/.test(text)) {
      break;
    } else if (first && text.trim()) {
      last = n;
    }
  }
  return first ? { first, last } : null;
}

// #R1 becomes the next free number of its letter; #V1TAIL goes with #V1.
function renumbered(text, lines) {
  const given = new Map();
  const used = {};
  return lines.replace(/#([A-Z]+?)(\d+)/g, (_, letter, number) => {
    const key = letter + number;
    if (!given.has(key)) {
      used[letter] ??= nextNumber(text, letter);
      given.set(key, letter + used[letter]++);
    }
    return given.get(key);
  });
}

function nextNumber(text, letter) {
  const numbers = [...text.matchAll(new RegExp(`^\\s+${letter}(\\d+)[A-Za-z]?\\s*:`, "gm"))].map((m) => Number(m[1]));
  return Math.max(0, ...numbers) + 1;
}
