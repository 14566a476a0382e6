import type { ExampleId } from "./examples.ts";

/** Starts what answers an example: a page loads this one and no other. */
export const workers: Readonly<Record<ExampleId, () => Worker>> = {
  "choose-size": () =>
    new Worker(new URL("../workers/try-choose-size.ts", import.meta.url), { type: "module" }),
  "read-chart": () =>
    new Worker(new URL("../workers/try-read-chart.ts", import.meta.url), { type: "module" }),
  "choose-for-table": () =>
    new Worker(new URL("../workers/try-choose-for-table.ts", import.meta.url), { type: "module" }),
  "average-readings": () =>
    new Worker(new URL("../workers/try-average-readings.ts", import.meta.url), { type: "module" }),
  "who-is-served": () =>
    new Worker(new URL("../workers/try-who-is-served.ts", import.meta.url), { type: "module" }),
  "study-error": () =>
    new Worker(new URL("../workers/try-study-error.ts", import.meta.url), { type: "module" }),
  "read-length": () =>
    new Worker(new URL("../workers/try-read-length.ts", import.meta.url), { type: "module" }),
};
