// The sheet's page: text on the left, drawing on the right. Bundled by make-bundle.sh into Assets/sheet-editor.js.
import { EditorView, basicSetup } from "codemirror";
import { EditorState, Prec } from "@codemirror/state";
import { keymap } from "@codemirror/view";
import { indentWithTab } from "@codemirror/commands";
import { yaml } from "@codemirror/lang-yaml";
import { lintGutter, nextDiagnostic } from "@codemirror/lint";
import { look } from "./look.js";
import { Keeping } from "./keeping.js";
import { Remarks } from "./remarks.js";
import { Offering } from "./offering.js";
import { again } from "./again.js";
import { take } from "./taking.js";
import { bindTools, showChecklist } from "./tools.js";
import { Picture } from "./picture.js";

export async function open(desk) {
  const part = (name) => desk.querySelector(`[data-part=${name}]`);
  const said = (name) => desk.querySelector(`[data-said=${name}]`);
  const keeping = new Keeping(desk.dataset.job, said("kept"), said("told"));
  const start = await keeping.start();
  const words = await (await fetch("/sheets/words")).json();
  const picture = new Picture(desk.dataset.job, part("drawing"), said("drawing"));
  const remarks = new Remarks(desk.dataset.job, part("problems"));
  const offering = new Offering(words, remarks);
  remarks.listeners.push((read) => showChecklist(part("checklist"), read.checklist));
  const changed = EditorView.updateListener.of((update) => {
    if (update.docChanged) {
      const text = update.state.doc.toString();
      keeping.changed(text);
      remarks.changed(text);
      picture.changed(text);
    }
  });
  // A shadow root: the editor's own styles then need no leave from the page's content policy.
  const root = part("text").shadowRoot ?? part("text").attachShadow({ mode: "open" });
  root.replaceChildren();
  const view = new EditorView({
    parent: root,
    root,
    state: EditorState.create({
      doc: start,
      extensions: [
        Prec.highest(keymap.of([
          { key: "Mod-s", run: () => (keeping.save(), true) },
          { key: "Mod-.", run: (v) => remarks.mend(v) },
          { key: "Alt-c", run: (v) => again(v, remarks.read) },
          { key: "Tab", run: take },
          { key: "F8", run: nextDiagnostic },
        ])),
        basicSetup,
        offering.extension(),
        keymap.of([indentWithTab]),
        yaml(),
        lintGutter(),
        look,
        EditorView.lineWrapping,
        EditorView.contentAttributes.of({ "aria-label": "Text of the sheet", spellcheck: "false" }),
        changed,
      ],
    }),
  });
  keeping.bind(view);
  remarks.bind(view);
  picture.bind(view);
  desk.querySelector("[data-do=save]").addEventListener("click", () => keeping.save());
  desk.querySelector("[data-do=mend]").addEventListener("click", () => remarks.mend(view));
  desk.querySelector("[data-do=again]").addEventListener("click", () => again(view, remarks.read));
  bindTools(desk, view, offering);
  remarks.changed(start, 0);
  picture.changed(start, 0);
  desk.dataset.open = "true";
}
