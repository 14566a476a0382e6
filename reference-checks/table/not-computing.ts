/** Exported functions that compute no figure, by package and by why not. */
export const notComputing: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {};
