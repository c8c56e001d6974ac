// Lines of a stage in the columns that sheets are written in: what, ends, remark. Figures that are asked for count as wide as they are shown.
const starts = [6, 28, 49];

export function aligned(lines, indent) {
  return lines
    .split("\n")
    .map((line) => indent + (/^[A-Z]+\d+:\s/.test(line) ? inColumns(line) : line))
    .join("\n");
}

function inColumns(line) {
  const [, remark] = /\s+(#\s.*)$/.exec(line) ?? [];
  const rest = remark ? line.slice(0, line.lastIndexOf(remark)).trimEnd() : line.trimEnd();
  const [, name, what, ends] = /^(\S+)\s+(.*?)(?:\s{2,}(\S.*))?$/.exec(rest);
  let out = name;
  for (const [i, piece] of [what, ends, remark].entries()) {
    if (piece) {
      out = out.padEnd(out.length + Math.max(1, starts[i] - shown(out).length)) + piece;
    }
  }
  return out;
}

function shown(text) {
  return text.replace(/\$\{\d+:([^}]*)\}/g, "$1");
}
