import { charts, outcome } from "tapewise";
import type { ShelfChart } from "../islands/choose.tsx";

/** The charts of the invented shelf, as they lie in the demo folder of the command. */
const texts = import.meta.glob<string>("../../../packages/tapewise/demo/charts/*", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** One chart as its file has it. */
export interface ShelfText {
  readonly id: string;
  readonly file: string;
  readonly text: string;
}

/** Every chart of the shelf as text, by name of file; read while the site is built. */
export const shelfTexts: readonly ShelfText[] = Object.entries(texts).map(([path, text]) => {
  const file = path.slice(path.lastIndexOf("/") + 1);
  return { id: file.replace(/\.\w+$/, ""), file, text };
});

/** The charts that can be read, with what was left out of the one that somebody copied in a hurry. */
export const shelf: readonly ShelfChart[] = shelfTexts.map(({ id, text }) => ({
  id,
  chart: outcome.unwrap(charts.safeParseChart(text)),
}));
