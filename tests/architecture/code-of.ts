/**
 * The TypeScript in a file. A page of the site mixes code with markup: its front matter and scripts
 * are code, the rest is blanked, line by line, so that line numbers still hold.
 */
export function codeOf(path: string, text: string): string {
  if (/\.[cm]?[jt]sx?$/.test(path)) return text;
  if (path.endsWith(".mdx")) return keepLines(text, (line) => /^(import|export)\b/.test(line));
  if (!path.endsWith(".astro")) return "";
  let fences = 0;
  let inScript = false;
  return keepLines(text, (line) => {
    if (line.trim() === "---" && fences < 2) {
      fences += 1;
      return false;
    }
    if (fences === 1) return true;
    if (/<script\b/.test(line)) {
      inScript = !/<\/script>/.test(line);
      return false;
    }
    if (/<\/script>/.test(line)) inScript = false;
    return inScript;
  });
}

function keepLines(text: string, keep: (line: string) => boolean): string {
  return text
    .split("\n")
    .map((line) => (keep(line) ? line : ""))
    .join("\n");
}
