// What the sheet's reader finds, underlined where it stands and listed below, with the word that would be right one key away.
import { setDiagnostics, forEachDiagnostic } from "@codemirror/lint";
import { ask, Newest } from "./asking.js";

const severities = { error: "error", warning: "warning", note: "info" };
const words = { error: "Wrong", warning: "Doubtful", note: "Note" };

export class Remarks {
  constructor(job, list) {
    Object.assign(this, { job, list, findings: [], text: "", read: { nets: [], parts: [] }, listeners: [], waiting: [] });
    this.reading = new Newest(120, (text, signal) => this.#read(text, signal));
  }

  bind(view) {
    this.view = view;
  }

  // Whether what was read last had these lines above and below the one that is being typed.
  covers(above, below) {
    return this.text.length >= above.length + below.length && this.text.startsWith(above) && this.text.endsWith(below);
  }

  // Settles when what was typed last has been read, cannot be read now, or takes too long to wait for.
  next(most = 3000) {
    return new Promise((settle) => {
      this.waiting.push(settle);
      setTimeout(settle, most);
    });
  }

  changed(text, pause) {
    this.reading.ask(text, pause);
  }

  async #read(text, signal) {
    let read;
    try {
      read = await (await ask(this.job, "read", { text }, signal)).json();
    } catch (e) {
      if (!signal.aborted) {
        this.#settle();
      }
      throw e;
    }
    if (signal.aborted || this.view.state.doc.toString() !== text) {
      return;
    }
    // While a line is half typed the rest of the sheet may not be readable: what was there to point at is still there.
    if (read.parts.length > 0 || this.read.parts.length === 0) {
      this.read = read;
    }
    this.text = text;
    this.findings = read.findings;
    this.view.dispatch(setDiagnostics(this.view.state, read.findings.map((f) => this.#diagnostic(f))));
    this.#show(read);
    this.#settle();
    this.listeners.forEach((l) => l(read));
  }

  #settle() {
    this.waiting.splice(0).forEach((settle) => settle());
  }

  #diagnostic(finding) {
    const { from, to } = this.#range(finding);
    return {
      from,
      to,
      severity: severities[finding.severity],
      message: finding.remedy ? `${finding.text}: ${finding.remedy}` : finding.text,
      actions: finding.instead.map((word) => ({
        name: `Write ${word}`,
        apply: (view, a, b) => view.dispatch({ changes: { from: a, to: b, insert: word }, selection: { anchor: a + word.length } }),
      })),
    };
  }

  // From where the reader points to the end of that word.
  #range(finding) {
    const doc = this.view.state.doc;
    if (finding.line < 1 || finding.line > doc.lines) {
      return { from: 0, to: 0 };
    }
    const line = doc.line(finding.line);
    const from = Math.min(line.from + Math.max(0, finding.column - 1), line.to);
    const word = /^[^\s,:{}[\]=]+/.exec(doc.sliceString(from, line.to));
    return { from, to: word ? from + word[0].length : Math.min(from + 1, line.to) };
  }

  // Writes the likeliest word in the place of the marked one: at the caret, else of the first that has one.
  mend(view) {
    const caret = view.state.selection.main.head;
    const mendable = [];
    forEachDiagnostic(view.state, (d, from, to) => {
      if (d.actions?.length) {
        mendable.push({ d, from, to });
      }
    });
    const line = view.state.doc.lineAt(caret);
    const at =
      mendable.find((m) => m.from <= caret && caret <= m.to) ??
      mendable.find((m) => m.from >= line.from && m.from <= line.to) ??
      mendable[0];
    at?.d.actions[0].apply(view, at.from, at.to);
    view.focus();
    return true;
  }

  #show(read) {
    const ul = document.createElement("ul");
    ul.className = "sheet-problems";
    ul.append(...read.findings.map((f) => this.#item(f)));
    this.list.replaceChildren(ul);
    if (read.findings.length === 0) {
      const p = document.createElement("p");
      p.className = "hint";
      p.textContent = read.usable ? "Nothing to remark." : "";
      this.list.replaceChildren(p);
    }
  }

  #item(finding) {
    const li = document.createElement("li");
    li.className = finding.severity;
    const go = document.createElement("button");
    go.type = "button";
    go.className = "quiet small";
    go.textContent = finding.line > 0 ? `line ${finding.line}` : "sheet";
    go.addEventListener("click", () => {
      const { from } = this.#range(finding);
      this.view.dispatch({ selection: { anchor: from }, scrollIntoView: true });
      this.view.focus();
    });
    const text = document.createElement("span");
    text.textContent = `${words[finding.severity]}: ${finding.text}`;
    const remedy = document.createElement("span");
    remedy.className = "remedy";
    remedy.textContent = finding.remedy;
    li.append(go, text, remedy);
    return li;
  }
}
