// Two-ended parts are written END -> END. The arrow costs one key, or none where the first end was taken from what is offered.
import { EditorView } from "@codemirror/view";
import { startCompletion } from "@codemirror/autocomplete";

const twoEnded = ["resistor", "capacitor", "inductor", "diode", "fuse", "lamp", "contact", "wire", "loudspeaker"];
const firstEnd = /^\s+([A-Za-z]+)\d+[A-Za-z]?:\s+\S.*\S$/;

export class Arrow {
  constructor(kinds) {
    this.letters = new Set(kinds.filter((k) => twoEnded.includes(k.name)).flatMap((k) => k.letters));
  }

  // > after a first end becomes the arrow with its spaces; where an arrow is half typed, or there is one already, it stays a letter.
  extension() {
    return EditorView.inputHandler.of((view, from, to, text) => {
      const before = view.state.sliceDoc(view.state.doc.lineAt(from).from, from);
      if (text !== ">" || before.endsWith("-") || !this.#wants(before)) {
        return false;
      }
      put(view, from, to, " -> ");
      return true;
    });
  }

  // Writes a word in the place of what is typed of it; as the first end of a two-ended part with the arrow behind it.
  end(view, from, to, word) {
    const line = view.state.doc.lineAt(from);
    const isLast = view.state.sliceDoc(to, line.to).trim() === "";
    const before = view.state.sliceDoc(line.from, from);
    put(view, from, to, isLast && this.#wants(before + word) ? `${word} -> ` : word);
  }

  #wants(before) {
    const letters = firstEnd.exec(before)?.[1].toUpperCase();
    return this.letters.has(letters) && !/->|#|=\S*$/.test(before.replace(/\bcontact\s+\S+/, ""));
  }
}

// Not as a letter typed: the list is asked for here, and once is enough.
function put(view, from, to, text) {
  view.dispatch({ changes: { from, to, insert: text }, selection: { anchor: from + text.length }, userEvent: "input" });
  if (text.endsWith(" -> ")) {
    startCompletion(view);
  }
}
