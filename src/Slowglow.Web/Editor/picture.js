// The drawing follows the text. The last one stays on the paper until the next is there.
import { ask, Newest } from "./asking.js";

export class Picture {
  constructor(job, paper, said) {
    Object.assign(this, { job, paper, said });
    this.root = paper.shadowRoot ?? paper.attachShadow({ mode: "open" });
    this.drawing = new Newest(60, (text, signal) => this.#draw(text, signal));
  }

  bind(view) {
    this.view = view;
    this.root.addEventListener("click", (e) => this.#point(e.target.closest("[data-part]")?.dataset.part));
  }

  changed(text, pause) {
    this.#follows(text.trim() ? "The drawing follows what you type." : "");
    this.drawing.ask(text, pause);
  }

  async #draw(text, signal) {
    const answer = await ask(this.job, "drawing", { text }, signal);
    if (signal.aborted) {
      return;
    }
    if (answer.status !== 200) {
      this.#follows(
        !text.trim() ? "Nothing to draw yet." : this.svg ? "As it was before the errors marked in the text." : "It is drawn once no error is left.",
      );
      return;
    }
    this.#show(await answer.text());
    this.said.textContent = "As typed.";
    this.paper.classList.remove("follows");
    this.paper.dataset.drawn = String(Number(this.paper.dataset.drawn ?? 0) + 1);
  }

  // The drawing's own styles go in as a sheet of the shadow root, which needs no leave from the page's content policy.
  #show(text) {
    const svg = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
    const styles = new CSSStyleSheet();
    styles.replaceSync([...svg.querySelectorAll("style")].map((s) => s.textContent).join("\n") + "svg { width: 100%; height: auto; }");
    svg.querySelectorAll("style").forEach((s) => s.remove());
    this.root.adoptedStyleSheets = [styles];
    this.root.replaceChildren(document.importNode(svg, true));
    this.svg = true;
  }

  #follows(words) {
    this.said.textContent = words;
    this.paper.classList.toggle("follows", this.svg === true);
  }

  // A part on the paper leads to its line.
  #point(name) {
    if (!name) {
      return;
    }
    const at = this.view.state.doc.toString().search(new RegExp(`^\\s*${name.replace(/\W/g, "\\$&")}\\s*:`, "m"));
    if (at >= 0) {
      this.view.dispatch({ selection: { anchor: this.view.state.doc.lineAt(at + 1).to }, scrollIntoView: true });
      this.view.focus();
    }
  }
}
