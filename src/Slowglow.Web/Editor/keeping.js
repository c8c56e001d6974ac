// Nothing typed is lost: every change goes into this browser at once, to the bench program at the next pause, and becomes a version when saved.
import { EditorView } from "@codemirror/view";
import { ask, Newest } from "./asking.js";

const held = [];

export class Keeping {
  constructor(job, kept, told) {
    Object.assign(this, { job, kept, told, basedOn: null, saved: "", dirty: false, saving: false, askedMeanwhile: null });
    this.drafts = new Newest(350, (text, signal) => this.#send(text, signal));
    addEventListener("pagehide", () => {
      if (this.dirty && this.view) {
        ask(this.job, "draft", this.#typed(this.view.state.doc.toString()), undefined, true).catch(() => {});
      }
    });
  }

  #key(window = this.window) {
    return `slowglow-sheet-${this.job}-${window}`;
  }

  #typed(text, overNewer = false) {
    return { text, window: this.window, basedOn: this.basedOn, overNewer };
  }

  // The text to begin with: what this window had typed, else what is saved.
  async start() {
    this.window = await ownWindow();
    this.news = new BroadcastChannel(`slowglow-sheet-${this.job}`);
    this.news.onmessage = () => this.#look();
    const state = await this.#state();
    this.basedOn = state.version?.id ?? null;
    this.newest = this.basedOn;
    this.saved = state.version?.text ?? "";
    this.count = state.count;
    const own = newer(this.#kept(this.window), state.drafts.find((d) => d.window === this.window));
    await this.#offer(state.drafts);
    if (state.unreadable.length > 0) {
      this.#tellUnreadable(state.unreadable);
    }
    if (own && own.text !== this.saved) {
      this.basedOn = own.basedOn;
      this.dirty = true;
      this.#say("What was typed here before is back. It is not saved yet.");
      if (this.basedOn !== this.newest) {
        this.#tellNewer();
      }
      this.caret = own.caret;
      return own.text;
    }
    this.#say(this.basedOn ? `Version ${this.count}, saved.` : "No sheet yet. What you type is kept from the first letter.");
    return this.saved;
  }

  bind(view) {
    this.view = view;
    if (this.caret <= view.state.doc.length) {
      view.dispatch({ selection: { anchor: this.caret } });
      requestAnimationFrame(() => view.dispatch({ effects: EditorView.scrollIntoView(this.caret, { y: "center" }) }));
    }
    if (this.dirty) {
      this.drafts.ask(view.state.doc.toString(), 0);
    }
  }

  changed(text) {
    this.dirty = text !== this.saved;
    const caret = this.view?.state.selection.main.head ?? 0;
    try {
      localStorage.setItem(this.#key(), JSON.stringify({ text, basedOn: this.basedOn, at: new Date().toISOString(), caret }));
    } catch {
      // The browser's store is full: the bench program has it.
    }
    this.#say("Typed, not saved.");
    this.drafts.ask(text);
  }

  async save(overNewer = false) {
    if (this.saving) {
      this.askedMeanwhile = { overNewer: overNewer || this.askedMeanwhile?.overNewer === true };
      return;
    }
    this.saving = true;
    const text = this.view.state.doc.toString();
    this.#say("Saving ...");
    try {
      const answer = await ask(this.job, "save", this.#typed(text, overNewer));
      const body = await answer.json();
      if (answer.ok) {
        this.#stored(text, body);
      } else {
        this.#say("Not saved. What you typed is kept.");
        this.#tellRefused(body);
      }
    } catch {
      this.#say("Not saved: the bench program does not answer. What you typed is kept in this browser.");
    } finally {
      this.saving = false;
    }
    // What was asked while the answer was on its way counts, unless that answer has settled it.
    const asked = this.askedMeanwhile;
    this.askedMeanwhile = null;
    if (asked && this.dirty) {
      await this.save(asked.overNewer);
    }
  }

  #stored(text, body) {
    this.basedOn = this.newest = body.sheet;
    this.saved = text;
    this.count += body.isNew ? 1 : 0;
    this.told.replaceChildren();
    this.news.postMessage("saved");
    if (this.view.state.doc.toString() === text) {
      this.dirty = false;
      localStorage.removeItem(this.#key());
      this.#say(body.isNew ? `Saved as version ${this.count}.` : `Nothing had changed: version ${this.count} stands.`);
    } else {
      this.changed(this.view.state.doc.toString());
    }
    document.dispatchEvent(new CustomEvent("slowglow-saved"));
  }

  async #send(text, signal) {
    if (!this.dirty) {
      await ask(this.job, "drop-draft", this.#typed(""), signal);
      localStorage.removeItem(this.#key());
      this.#say(this.basedOn ? `Version ${this.count}, as it is saved.` : "Nothing typed yet.");
      return;
    }
    let answer;
    try {
      answer = await ask(this.job, "draft", this.#typed(text), signal);
    } catch (e) {
      if (e.name !== "AbortError") {
        this.#say("The bench program does not answer. What you type is kept in this browser.");
      }
      throw e;
    }
    const body = answer.ok ? await answer.json() : { kept: false };
    if (!this.dirty) {
      // Saved while this was on its way: what it left behind is a copy of a version.
      await ask(this.job, "drop-draft", this.#typed(""));
      return;
    }
    this.#say(body.kept ? "Not saved yet; kept here and by the bench program." : "Not saved yet; kept in this browser only.");
    if (answer.ok) {
      this.newest = body.newest;
      if (this.newest !== this.basedOn) {
        this.#tellNewer();
      }
    }
  }

  // Another window saved: with nothing typed here its text is taken, otherwise that is said.
  async #look() {
    const state = await this.#state();
    this.newest = state.version?.id ?? null;
    this.count = state.count;
    if (this.newest === this.basedOn) {
      return;
    }
    if (this.dirty) {
      this.#tellNewer();
    } else {
      this.#take(state.version.text, this.newest, `Version ${this.count}, saved in another window just now.`);
    }
  }

  #take(text, id, said) {
    this.basedOn = id;
    this.saved = text;
    this.view.dispatch({ changes: { from: 0, to: this.view.state.doc.length, insert: text } });
    this.dirty = false;
    this.told.replaceChildren();
    this.#say(said);
  }

  #tellNewer() {
    this.#tell("A newer version of this sheet was saved in another window or at another bench. Yours is kept, and follows it only when you say so.", [
      ["Save mine after it", () => this.save(true)],
      ["Take the newer one", () => this.#takeNewer()],
    ]);
  }

  #tellRefused(body) {
    this.#tell(`${body.refused} ${body.remedy}`, [
      ["Save mine after it", () => this.save(true)],
      ["Take the newer one", () => this.#takeNewer()],
    ]);
  }

  // What this window had typed goes back to the shelf under another name, so that even this can be undone.
  async #takeNewer() {
    const text = this.view.state.doc.toString();
    await ask(this.job, "draft", { text, window: newName(), basedOn: this.basedOn });
    const state = await this.#state();
    this.count = state.count;
    this.#take(state.version.text, state.version.id, `Version ${state.count}. What you had typed is offered again when the page is loaded.`);
  }

  // Text typed in a window that is closed by now.
  async #offer(drafts) {
    const open = await openWindows();
    const mine = Object.keys(localStorage)
      .filter((k) => k.startsWith(`slowglow-sheet-${this.job}-`))
      .map((k) => ({ ...this.#kept(k.split("-").at(-1)), window: k.split("-").at(-1) }));
    const others = [...drafts, ...mine].filter((d) => d.window !== this.window && !open.has(d.window) && d.text && d.text !== this.saved);
    const last = others.sort((a, b) => (a.at < b.at ? 1 : -1))[0];
    if (last) {
      const when = new Date(last.at).toLocaleString();
      this.#tell(`Text typed on ${when} in a window that is closed now was not saved (${last.text.split("\n").length} lines).`, [
        ["Carry on with it", () => this.#carryOn(last)],
        ["Throw it away", () => this.#drop(last)],
      ]);
    }
  }

  // Beside what else is told: it takes nothing away.
  #tellUnreadable(files) {
    const p = document.createElement("p");
    p.textContent = `Text typed before into this sheet is damaged and cannot be read (${files.join(", ")} in the folder drafts beside the shop's file). What was saved is safe. Is the disk sound, and the backup of last night there?`;
    this.told.append(p);
  }

  #carryOn(draft) {
    this.told.replaceChildren();
    this.basedOn = draft.basedOn ?? null;
    this.view.dispatch({ changes: { from: 0, to: this.view.state.doc.length, insert: draft.text } });
    this.#forget(draft.window);
  }

  #drop(draft) {
    this.told.replaceChildren();
    this.#forget(draft.window);
  }

  #forget(window) {
    localStorage.removeItem(this.#key(window));
    ask(this.job, "drop-draft", { text: "", window }).catch(() => {});
  }

  #tell(text, ways) {
    const p = document.createElement("p");
    p.textContent = text;
    const buttons = ways.map(([words, act]) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = words;
      button.addEventListener("click", act);
      return button;
    });
    this.told.replaceChildren(p, ...buttons);
  }

  #say(text) {
    this.kept.textContent = text;
  }

  #kept(window) {
    try {
      return JSON.parse(localStorage.getItem(this.#key(window)));
    } catch {
      return null;
    }
  }

  async #state() {
    const answer = await fetch(`/job/${this.job}/sheet/state`, { cache: "no-store" });
    return answer.json();
  }
}

function newer(a, b) {
  return !a ? b : !b ? a : a.at >= b.at ? a : b;
}

function newName() {
  return Array.from(crypto.getRandomValues(new Uint8Array(8)), (n) => n.toString(16).padStart(2, "0")).join("");
}

// A name that outlives a reload; a copied window gets one of its own.
async function ownWindow() {
  if (held[0]) {
    return held[0];
  }
  const before = sessionStorage.getItem("slowglow-window");
  const name = before && (await hold(before)) ? before : newName();
  if (name !== before) {
    await hold(name);
  }
  sessionStorage.setItem("slowglow-window", name);
  held.push(name);
  return name;
}

function hold(name) {
  return new Promise((taken) => {
    navigator.locks.request(`slowglow-window-${name}`, { ifAvailable: true }, (lock) => {
      taken(lock !== null);
      return lock === null ? undefined : new Promise(() => {});
    });
  });
}

async function openWindows() {
  const { held: locks } = await navigator.locks.query();
  return new Set(locks.map((l) => l.name).filter((n) => n.startsWith("slowglow-window-")).map((n) => n.slice(16)));
}
