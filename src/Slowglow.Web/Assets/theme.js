// Sets the chosen colours before anything is painted.
(() => {
  const chosen = localStorage.getItem("slowglow-theme");
  if (chosen === "light" || chosen === "dark") {
    document.documentElement.dataset.theme = chosen;
  }
})();
