/** What Starlight waits for before it fetches its search, 26 kB of script on every page. */
const ON_IDLE = "window.requestIdleCallback || ((cb) => setTimeout(cb, 1))";
/** What it waits for here; `search.astro` sends it with the first use of the search. */
const ON_USE = '((cb) => window.addEventListener("search-wanted", cb, { once: true }))';

/** The part of a plugin of Vite that is needed here. */
interface TransformPlugin {
  readonly name: string;
  readonly enforce: "pre";
  readonly transform: (code: string, id: string) => string | undefined;
}

/** A plugin that lets the search of the documentation come with its first use, and not with each page. */
export function searchOnUse(): TransformPlugin {
  return {
    name: "search-on-use",
    enforce: "pre",
    transform: (code, id) => {
      if (!/starlight\/.*\/Search\.astro\?.*type=script/.test(id)) return undefined;
      if (!code.includes(ON_IDLE))
        throw new Error("Starlight fetches its search in another way than before.");
      return code.replace(ON_IDLE, ON_USE);
    },
  };
}
