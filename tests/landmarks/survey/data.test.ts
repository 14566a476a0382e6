import {
  dimension,
  dimensionIds,
  landmarks,
  limitRules,
  sourceIds,
  sources,
  surveyFigures,
} from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";

const guides = dimensionIds.map(dimension);

describe("sources and limits", () => {
  test("each source id has one entry, and each source backs a figure or a finding", () => {
    expect(sources.map((source) => source.id).toSorted()).toEqual([...sourceIds].toSorted());
    const told = JSON.stringify([landmarks, guides]);
    // These three back whole tables: survey rows, names of standards, and the cautions.
    const inHeaders = ["ansur-handbook", "kouchi-2020", "load-numbness-2017"];
    for (const id of sourceIds.filter((id) => !inHeaders.includes(id))) {
      expect(told, id).toContain(`"source":"${id}"`);
    }
  });

  test("every dimension has a limit rule over survey rows that exist", () => {
    for (const id of dimensionIds) {
      for (const from of limitRules[id].from) {
        expect(
          surveyFigures.some((row) => row.dimension === from),
          `${id} from ${from}`,
        ).toBe(true);
      }
    }
  });

  test("every survey row is in order: smallest, mean, largest, and no row twice", () => {
    for (const row of surveyFigures) {
      expect(row.minMm).toBeLessThan(row.meanMm);
      expect(row.meanMm).toBeLessThan(row.maxMm);
      expect(row.sdMm).toBeLessThan((row.maxMm - row.minMm) / 2);
    }
    const keys = surveyFigures.map((row) => `${row.dimension} ${row.sex}`);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
