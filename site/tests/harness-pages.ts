import { readdirSync } from "node:fs";
import { dist } from "./serve-site.ts";

/** The address below the base of every page that was built, such as `choose/`. */
export function listPages(): readonly string[] {
  return readdirSync(dist, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => file === "index.html" || file.endsWith("/index.html"))
    .map((file) => file.replace(/index\.html$/, ""))
    .sort();
}

/** The pages that are ours and not of the documentation: the first one and the working pages, in both languages. */
export function listWorkingPages(): readonly string[] {
  const ids = ["", "choose/", "read/", "average/", "fits/", "hands/", "arrives/"];
  const all = listPages();
  return [...ids, ...ids.map((id) => `de/${id}`)].filter((path) => all.includes(path));
}

/** Every page of the documentation; the reference has hundreds of one template, of which one of a kind stands for them. */
export function sampleDocumentation(): readonly string[] {
  const working = listWorkingPages();
  const pages = listPages().filter((path) => !working.includes(path));
  const reference = pages.filter((path) => path.startsWith("api/"));
  return [
    ...pages.filter((path) => !path.startsWith("api/")),
    ...reference.slice(0, 2),
    ...reference.filter((path) => /functions\//.test(path)).slice(0, 1),
    ...reference.filter((path) => /interfaces\//.test(path)).slice(0, 1),
  ];
}
