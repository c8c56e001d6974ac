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
      // Whoever was typing goes on where the line ends, unless the hands are elsewhere by now; on the heading only the program has put them.
      if (document.activeElement.matches("body, h1")) {
        input.focus();
        input.setSelectionRange(kept.length, kept.length);
      }
    }
    return input.value;
  },
  // A page was gone to. Hands that are in a field by now, or in the text of a sheet, stay there.
  focusHeading() {
    const [heading, at] = [document.querySelector("h1"), document.activeElement];
    if (heading && (!at || at.matches("body, main, a, button, summary"))) {
      heading.tabIndex = -1;
      heading.focus();
    }
  },
  // A drawing was put on the page: one stop for the Tab key, arrows go on from there; the next reading comes into view when it is a new one.
  drawing(paper, card, bring) {
    paper.slowglowCard = card;
    const marks = paper.querySelectorAll("[data-point], [data-part]");
    marks.forEach((mark, i) => mark.setAttribute("tabindex", i === 0 ? "0" : "-1"));
    const ring = paper.querySelector(".ring");
    if (bring && ring) {
      const [at, box] = [ring.getBoundingClientRect(), paper.getBoundingClientRect()];
      paper.scrollLeft += at.left + at.width / 2 - box.left - box.width / 2;
      paper.scrollTop += at.top + at.height / 2 - box.top - box.height / 2;
    }
  },
};

function choose(mark) {
  const card = mark?.closest(".drawn")?.slowglowCard;
  if (card && mark.dataset.point) {
    card.invokeMethodAsync("ChoosePointAsync", mark.dataset.point);
  } else if (card) {
    card.invokeMethodAsync("ChoosePart", mark.dataset.part);
  }
}

document.addEventListener("click", (e) => choose(e.target.closest?.(".drawn [data-point], .drawn [data-part]")));

document.addEventListener("keydown", (e) => {
  const mark = e.target.closest?.(".drawn [data-point], .drawn [data-part]");
  if (!mark) {
    return;
  }
  if (e.key === "Enter" || e.key === " ") {
    e.preventDefault();
    choose(mark);
    return;
  }
  const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[e.key];
  if (step) {
    e.preventDefault();
    const marks = [...mark.closest(".drawn").querySelectorAll("[data-point], [data-part]")];
    const to = marks[(marks.indexOf(mark) + step + marks.length) % marks.length];
    mark.setAttribute("tabindex", "-1");
    to.setAttribute("tabindex", "0");
    to.focus();
  }
});

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

// Forms are answered over the page's own connection. While that is away the browser must not send one itself: it would leave the page. Signing in and
// out alone are posted.
document.addEventListener("submit", (e) => {
  if (e.target.method !== "post") {
    e.preventDefault();
  }
});

// A sheet is typed on without that connection: the page is loaded anew when the hands are elsewhere, not under them.
function backAgain() {
  const desk = document.querySelector(".sheet-desk[data-open]");
  if (!desk?.contains(document.activeElement)) {
    location.reload();
    return;
  }
  away.onConnectionUp();
  desk.addEventListener("focusout", (e) => {
    if (!desk.contains(e.relatedTarget)) {
      location.reload();
    }
  });
}

// While the program is away: ask every second, and load the page anew once it answers.
const away = {
  onConnectionDown() {
    document.body.dataset.away = "true";
    const ask = setInterval(async () => {
      try {
        const answer = await fetch("/assets/mark.svg", { cache: "no-store" });
        if (answer.ok) {
          clearInterval(ask);
          backAgain();
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
