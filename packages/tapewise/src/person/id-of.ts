/** What comes back as the id of a person: only what went in as one. */
export function idOf(value: unknown): string | number | null {
  const id =
    typeof value === "object" && value !== null && Object.hasOwn(value, "id")
      ? Reflect.get(value, "id")
      : null;
  return typeof id === "string" || Number.isSafeInteger(id) ? id : null;
}
