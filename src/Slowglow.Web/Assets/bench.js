// What only the browser can do: the text and caret of the reading line, the colours, and coming back after the program was away.
window.slowglow = {
  putLine(input, text, caret) {
    input.value = text;
    remember(input);
    input.focus();
    input.setSelectionRange(caret, caret);
  },
  // Clears only what was stored: more may have been typed meanwhile.
  clearLine(input, stored) {
    if (input.value === stored) {
      input.value = "";
    }
    remember(input);
  },
  keepLine(input, key) {
    input.dataset.keep = key;
    const kept = sessionStorage.getItem(key);
    if (kept && !input.value) {
      input.value = kept;
    }
    return input.value;
  },
};

function remember(input) {
  if (input.dataset.keep) {
    sessionStorage.setItem(input.dataset.keep, input.value);
  }
}

document.addEventListener("input", (e) => remember(e.target));

// The arrows choose among suggestions: they must not move the caret too.
document.addEventListener("keydown", (e) => {
  if (e.target.getAttribute?.("role") === "combobox" && (e.key === "ArrowDown" || e.key === "ArrowUp")) {
    e.preventDefault();
  }
});

document.addEventListener("click", (e) => {
  if (e.target.closest?.("[data-print]")) {
    print();
  }
});

document.addEventListener("click", (e) => {
  if (!e.target.closest?.("[data-theme-toggle]")) {
    return;
  }
  const root = document.documentElement;
  const dark = root.dataset.theme ? root.dataset.theme === "dark" : matchMedia("(prefers-color-scheme: dark)").matches;
  root.dataset.theme = dark ? "light" : "dark";
  localStorage.setItem("slowglow-theme", root.dataset.theme);
});

// While the program is away: ask every second, and load the page anew once it answers.
const away = {
  onConnectionDown() {
    document.body.dataset.away = "true";
    const ask = setInterval(async () => {
      try {
        const answer = await fetch("/assets/mark.svg", { cache: "no-store" });
        if (answer.ok) {
          clearInterval(ask);
          location.reload();
        }
      } catch {
        // Not yet.
      }
    }, 1000);
  },
  onConnectionUp() {
    delete document.body.dataset.away;
  },
};

Blazor.start({ circuit: { reconnectionHandler: away } });
