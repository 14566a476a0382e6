/**
 * The form in which names are compared: letters and digits only, lower case, so that "Hip-Belt",
 * "hipbelt" and "hip belt" are one name.
 */
export function nameKey(text: string): string {
  return text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "");
}
