// What fits at the caret: kinds, type numbers with their pins, nets in use, pins still free. All of it by the reader's own tables.
import { autocompletion, snippetCompletion, snippet, startCompletion } from "@codemirror/autocomplete";
import { EditorView } from "@codemirror/view";
import { Arrow } from "./arrow.js";
import { aligned } from "./columns.js";
import { knobsIn, namesIn, nextNumber, renumbered, stands } from "./numbering.js";

// What usually follows the name of a section.
const sectionForms = {
  sheet: "1\n${}",
  mains: "{ volts: ${1:230 V}, frequency: ${2:50 Hz} }\n${}",
  parts: "\n  ${}",
  signal: "{ in: ${1:IN}, out: ${2:OUT}, source: ${3:10k}, level: ${4:100 mV} }\n${}",
  points: "\n  ${1:HT1}: { access: ${2:1 min} }\n${}",
};

const potForm = "${1:1M} ${2:log} ${3:VOLUME} top=${4:TOP} wiper=${5:WIPER} bottom=${6:GND}${}";

export class Offering {
  constructor(words, remarks) {
    Object.assign(this, { words, remarks, arrow: new Arrow(words.kinds) });
  }

  extension() {
    return [
      autocompletion({
        override: [(c) => this.#known(() => this.#pins(c), c), (c) => this.#ratings(c), (c) => this.#known(() => this.#ends(c), c), (c) => this.#what(c), (c) => this.#start(c)],
        maxRenderedOptions: 40,
        selectOnOpen: false,
        interactionDelay: 0,
      }),
      this.arrow.extension(),
    ];
  }

  // A line typed a moment ago may not have been read yet, and may have brought a part, its pins or a net: that is waited for.
  async #known(offer, context) {
    const offered = offer();
    const isPin = context.matchBefore(/[A-Za-z]+\d+[A-Za-z]?\.\w*/) !== null;
    if ((!offered && !isPin) || this.remarks.covers(...around(context))) {
      return offered;
    }
    await this.remarks.next();
    return context.aborted ? null : offer();
  }

  // V1. : its pins, those that nothing is on first.
  #pins(context) {
    const typed = context.matchBefore(/[A-Za-z]+\d+[A-Za-z]?\.[\w+-]*/);
    const name = typed?.text.split(".")[0];
    const part = name && this.remarks.read.parts.find((p) => p.name === name);
    if (!part) {
      return null;
    }
    // Where reading was not to be waited for, a line above may have taken a pin that was free.
    const others = around(context).join("");
    return {
      from: typed.from + name.length + 1,
      options: part.pins
        .map((p) => ({ ...p, isFree: p.isFree && !stands(`${name}.${p.number}`, others) && !(p.electrode && stands(`${name}.${p.electrode}`, others)) }))
        .map((p) => ({
          label: p.number,
          apply: (view, c, from, to) => this.arrow.end(view, from, to, p.number),
          detail: [p.electrode, p.isFree ? "free" : p.net.includes(".") ? "in use" : `on ${p.net}`].filter(Boolean).join(", "),
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
    const others = around(context).join("");
    // What was read may be older than what stands here, or have met this line half typed: what stands nowhere else is nothing to go to.
    const nets = this.remarks.read.nets.filter((n) => stands(n, others));
    const parts = this.remarks.read.parts.filter((p) => new RegExp(`^\\s+${p.name}\\s*:`, "m").test(others));
    const all = [...new Set(["GND", ...nets, ...namesIn(others)])].map((n) => ({
      label: n,
      apply: (view, c, from, to) => this.arrow.end(view, from, to, n),
      type: "variable",
      detail: "net",
      boost: n === "GND" ? 20 : 10,
    }));
    // Of valves with every pin wired the one that the lines above were about is likelier.
    const above = context.state.sliceDoc(0, line.from);
    const owning = parts.filter((p) => p.pins.length > 2).map((p) => ({ ...p, seen: above.lastIndexOf(`${p.name}.`) }));
    const last = Math.max(0, ...owning.map((p) => p.seen));
    const owners = owning.map((p) => ({
      label: p.name,
      apply: (view, c, from, to) => {
        view.dispatch({ changes: { from, to, insert: `${p.name}.` }, selection: { anchor: from + p.name.length + 1 } });
        startCompletion(view);
      },
      detail: p.what,
      type: "class",
      boost: p.pins.some((pin) => pin.isFree) ? 15 : p.seen === last ? 12 : 10,
    }));
    return { from: context.pos - word.length, options: [...all, ...owners], validFor: /^[\w+-]*$/ };
  }

  // After the value: ratings that parts of this letter have already.
  #ratings(context) {
    const before = context.matchBefore(/^\s+[A-Za-z]+\d+[A-Za-z]?:\s+[\d.,][^\s>#]*\s+(\S+\s+)*?\d[\w.]*/);
    if (!before || before.text.includes("->")) {
      return null;
    }
    const letters = /[A-Za-z]+/.exec(before.text)[0];
    const word = /\d[\w.]*$/.exec(before.text)[0];
    const lines = context.state.doc.toString().matchAll(new RegExp(`^\\s+${letters}\\d+[A-Za-z]?:\\s+\\S+\\s+(\\d[\\d.]*[WV])(?=\\s)`, "gm"));
    const options = [...new Set([...lines].map((m) => m[1]))].map((r) => ({ label: r, apply: `${r} `, detail: "rating", type: "constant" }));
    return options.length === 0 ? null : { from: context.pos - word.length, options, validFor: /^\d[\w.]*$/ };
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
    const letters = /[A-Za-z]+/.exec(before.text)[0].toUpperCase();
    const own = this.words.kinds.filter((k) => k.letters.includes(letters));
    const fitting = own.length > 0 ? own : this.words.kinds;
    const kinds = fitting.flatMap((k) => k.words.map((w) => kindWord(w, k.name)));
    const text = context.state.doc.toString();
    const devices = this.words.devices
      .filter((d) => own.length === 0 || own.some((k) => k.devices.includes(d.kind)))
      .flatMap((d) =>
        [d.type, ...d.alsoCalled].map((t) => ({
          label: t,
          detail: d.kind,
          info: `${d.type}: ${d.pins}`,
          type: "class",
          boost: text.includes(` ${t} `) || text.includes(` ${t}\n`) ? 20 : 0,
        })),
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
      return { from, options: [...this.words.sections.map((s) => section(s, context.state.doc.toString())), ...this.stages(context.state, "  ")] };
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

  // Behind the last figure Tab leads to a line of its own, for what follows.
  lines(state, stage, indent) {
    const lines = stage.lines.replace(/\s+$/, "").split("\n").map((l) => l.replace(/^ {2}/, ""));
    return aligned(renumbered(state.doc.toString(), lines.join("\n")), indent) + `\n${indent}\${}`;
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
    view.dispatch({ effects: EditorView.scrollIntoView(line.to, { y: "start", yMargin: 40 }) });
    view.focus();
  }
}

// All that stands above and below the line of the caret.
function around({ state, pos }) {
  const line = state.doc.lineAt(pos);
  return [state.sliceDoc(0, line.from), state.sliceDoc(line.to)];
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

function kindWord(word, detail) {
  return /^(pot|trimmer)$/.test(word)
    ? snippetCompletion(`${word} ${potForm}`, { label: word, detail, type: "keyword" })
    : { label: word, apply: `${word} `, detail, type: "keyword" };
}

function section(name, text) {
  const knobs = name === "controls" ? knobsIn(text).map((k, i) => `\n  ${k}: \${${i + 1}:50 %}`) : [];
  const form = knobs.length > 0 ? `${knobs.join("")}\n\${}` : sectionForms[name];
  return form === undefined
    ? { label: name, apply: `${name}: `, type: "keyword" }
    : snippetCompletion(form.startsWith("\n") ? `${name}:${form}` : `${name}: ${form}`, { label: name, type: "keyword" });
}
