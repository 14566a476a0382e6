import type { Issue } from "@tapewise/outcome";
import { type AboutKey, aboutKeys, aboutNames, readAbout } from "./about-chart.ts";
import type { DraftChart } from "./draft.ts";
import { keepFirst } from "./keep-first.ts";
import { itemsOf, partsOf, type Reading, textOf, wrongKind } from "./parts.ts";
import { readJsonBelt, readJsonSize } from "./read-json-size.ts";
import type { Source, SourceEntry } from "./source.ts";

const KEYS = [...aboutKeys, "sizes", "belts"] as const;

/** Reads the JSON form of a chart. What cannot be read is reported and left out. */
export function readJsonChart(source: Source): DraftChart {
  const issues: Issue[] = [];
  const reading: Reading = { path: [], issues };
  const parts = partsOf(source, KEYS, "a chart", reading);
  if (parts === undefined) return { about: {}, sizes: [], belts: [], issues, place: source.place };
  const text = (key: Exclude<AboutKey, "swappable">): string | undefined =>
    textOf(parts.get(key), aboutNames[key], reading);
  const swappable = parts.get("swappable");
  const texts = {
    chart: text("chart"),
    maker: text("maker"),
    product: text("product"),
    cut: text("cut"),
    harness: text("harness"),
    swappable: swappable === undefined ? undefined : swappableTexts(swappable, reading),
  };
  const about = readAbout(texts, issues, (key) => parts.get(key)?.value.place);
  const sizes = itemsOf(parts.get("sizes"), "the list of sizes", reading).map((item, position) =>
    readJsonSize(item, { path: ["sizes", position], issues }),
  );
  const belts = itemsOf(parts.get("belts"), "the list of hip belts", reading).map((item, position) =>
    readJsonBelt(item, { path: ["belts", position], issues }),
  );
  return {
    about,
    sizes: keepFirst(sizes, issues),
    belts: keepFirst(belts, issues),
    issues,
    place: source.place,
  };
}

function swappableTexts(entry: SourceEntry, reading: Reading): readonly string[] {
  return itemsOf(entry, "the list of swappable parts", reading).flatMap((item, position) => {
    if (item.kind === "text") return [item.value.trim()];
    const form = 'text such as "hip-belt"';
    reading.issues.push(wrongKind(item, aboutNames.swappable, form, ["swappable", position]));
    return [];
  });
}
