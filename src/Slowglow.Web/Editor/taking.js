// Tab takes what is offered first, or what the arrows chose. Enter takes only what the arrows chose: otherwise a new name that begins like an
// old one would become the old one at the end of its line.
import { acceptCompletion, closeCompletion, completionStatus, currentCompletions, hasNextSnippetField, selectedCompletionIndex, setSelectedCompletion } from "@codemirror/autocomplete";

export function take(view) {
  const status = completionStatus(view.state);
  if (status === null) {
    return false;
  }
  if (hasNextSnippetField(view.state) && (status === "pending" || isWhole(view.state))) {
    closeCompletion(view);
    return false;
  }
  const doc = view.state.doc;
  // The list may be a moment behind a quick hand.
  const attempt = (left) => {
    if (view.state.doc !== doc || taken(view) || left === 0) {
      return;
    }
    setTimeout(() => attempt(left - 1), 40);
  };
  attempt(12);
  return true;
}

// Of a figure that stands there already as it is offered there is nothing to take: Tab goes on.
function isWhole(state) {
  const first = currentCompletions(state)[0]?.label;
  const caret = state.selection.main.head;
  return first !== undefined && state.sliceDoc(caret - first.length, caret) === first;
}

function taken(view) {
  if (completionStatus(view.state) !== "active") {
    return false;
  }
  if ((selectedCompletionIndex(view.state) ?? -1) < 0) {
    view.dispatch({ effects: setSelectedCompletion(0) });
  }
  return acceptCompletion(view);
}
