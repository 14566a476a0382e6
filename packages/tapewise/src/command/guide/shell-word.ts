/** A word as a POSIX shell has to be given it. */
export function shellWord(word: string): string {
  if (/^[\w./:@%+=-]+$/.test(word)) return word;
  return /["$`\\!]/.test(word) ? `'${word.replaceAll("'", "'\\''")}'` : `"${word}"`;
}
