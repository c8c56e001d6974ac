// Designators and names that go on from those a text has.

// #R1 becomes the next free number of its letter; #V1TAIL goes with #V1.
export function renumbered(text, lines) {
  const next = counter(text);
  const given = new Map();
  return lines.replace(/#([A-Z]+?)(\d+)/g, (_, letter, number) => {
    const key = letter + number;
    if (!given.has(key)) {
      given.set(key, next(letter));
    }
    return given.get(key);
  });
}

// Gives the next designator of a letter, and the one after that when asked again.
export function counter(text) {
  const used = {};
  return (letter) => letter + (used[letter] = (used[letter] ?? nextNumber(text, letter) - 1) + 1);
}

export function nextNumber(text, letter) {
  const numbers = [...text.matchAll(new RegExp(`^\\s+${letter}(\\d+)[A-Za-z]?\\s*:`, "gm"))].map((m) => Number(m[1]));
  return Math.max(0, ...numbers) + 1;
}

// Whether a word stands in the text by itself.
export function stands(word, text) {
  return new RegExp(`(?<![\\w.])${word.replace(/\W/g, "\\$&")}(?!\\w)`).test(text);
}

// Names of nets as the lines have them: the reader knows them a moment later, and not while a line is in its way.
export function namesIn(text) {
  const ends = /(?<![\w.+-])([A-Za-z][\w+-]*)\s+(?=->)|(?:->\s*|=)([A-Za-z][\w+-]*)(?![\w.+-])|^\s+J\d+:[^\S\n]+\w+[^\S\n]+([A-Za-z]\w*)[^\S\n]*(?=$|#)/gm;
  return [...text.matchAll(ends)].map((m) => m[1] ?? m[2] ?? m[3]);
}

// Names of the knobs that pots and trimmers belong to.
export function knobsIn(text) {
  return [...new Set([...text.matchAll(/\b(?:pot|trimmer)\b[^=\n#]*?\s([A-Z][A-Z_]*\d*)(?=\s)/g)].map((m) => m[1]))];
}
