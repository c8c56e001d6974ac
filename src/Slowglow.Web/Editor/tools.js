// Stages by name, a sheet to begin from, and what a diagnosis still lacks.
export function bindTools(desk, view, offering) {
  const tool = (name) => desk.querySelector(`[data-do=${name}]`);
  const stages = tool("stage");
  stages.append(...offering.words.stages.map((s, i) => new Option(s.name, i)));
  stages.addEventListener("change", () => {
    if (stages.value !== "") {
      offering.put(view, offering.words.stages[stages.value]);
      stages.value = "";
    }
  });
  const copy = tool("copy");
  fetch("/sheets")
    .then((answer) => answer.json())
    .then((sheets) => copy.append(...sheets.map((s) => new Option(`${s.job}, ${s.title}`, s.job))));
  copy.addEventListener("change", async () => {
    const job = copy.value;
    copy.value = "";
    const answer = job && (await fetch(`/job/${job}/sheet/text.yaml`));
    if (answer?.ok) {
      replace(view, await answer.text());
    }
  });
  tool("file").addEventListener("change", async (e) => {
    const file = e.target.files[0];
    if (file) {
      replace(view, await file.text());
      e.target.value = "";
    }
  });
  tool("export").addEventListener("click", () => {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([view.state.doc.toString()], { type: "application/yaml" }));
    link.download = `sheet-of-job-${desk.dataset.job}.yaml`;
    link.click();
    URL.revokeObjectURL(link.href);
  });
}

function replace(view, text) {
  view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: text.replace(/\r\n?/g, "\n") }, selection: { anchor: 0 } });
  view.focus();
}

export function showChecklist(list, checklist) {
  list.replaceChildren(
    ...[...checklist].sort((a, b) => a.isThere - b.isThere).map((c) => {
      const li = document.createElement("li");
      li.className = c.isThere ? "there" : "note";
      const text = document.createElement("span");
      text.textContent = `${c.isThere ? "There" : "Missing"}: ${c.text}`;
      const remedy = document.createElement("span");
      remedy.className = "remedy";
      remedy.textContent = c.remedy;
      li.append(text, remedy);
      return li;
    }),
  );
}
