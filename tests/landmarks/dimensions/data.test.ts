import {
  cautionsFor,
  dimension,
  dimensionIds,
  dimensionNames,
  landmarkIds,
  landmarks,
} from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";

const guides = dimensionIds.map(dimension);

describe("dimensions", () => {
  test("there are at least fourteen, and every one has a guide and names", () => {
    expect(dimensionIds.length).toBeGreaterThanOrEqual(14);
    expect(guides.map((guide) => guide.id)).toEqual([...dimensionIds]);
    expect(dimensionNames.map((names) => names.id)).toEqual([...dimensionIds]);
  });

  test.each(guides)("$id runs between landmarks that exist, each named once", (guide) => {
    for (const id of guide.landmarks) expect(landmarkIds).toContain(id);
    expect(new Set(guide.landmarks).size).toBe(guide.landmarks.length);
  });

  test.each(guides)("$id can be taken alone, or says why it needs a helper", (guide) => {
    const alone = guide.ways.some((way) => way.who === "self");
    expect(alone).toBe(guide.helperReason === undefined);
  });

  test.each(guides)("$id asks before anybody else touches", (guide) => {
    const byHelper = guide.ways.filter((way) => way.who === "helper");
    for (const way of byHelper.filter(() => guide.id !== "stature")) {
      expect(way.steps[0].caution).toBe("ask-first");
    }
  });

  test.each(guides)("$id has slips with codes of their own", (guide) => {
    const codes = guide.slips.map((slip) => slip.code);
    expect(new Set(codes).size).toBe(codes.length);
    for (const code of codes) expect(code).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
  });

  test.each(guides)("the cautions named in the steps of $id belong to it", (guide) => {
    const own = cautionsFor(guide.id).map((caution) => caution.code);
    for (const step of guide.ways.flatMap((way) => way.steps)) {
      if (step.caution !== undefined) expect(own).toContain(step.caution);
    }
  });

  test("moving the neck is never asked for without its caution", () => {
    for (const { id, ways } of guides) {
      for (const step of ways.flatMap((way) => way.steps)) {
        if (/\b(find|mark)(s|ed)? (and mark )?C7\b/i.test(step.text)) {
          expect(step.caution, `${id}: ${step.text}`).toBe("neck-movement");
        }
      }
    }
  });

  test("the torso length has the fullest guide: every tool, both measurers, the most slips", () => {
    const torso = dimension("torso-length");
    expect(new Set(torso.ways.map((way) => way.tool))).toEqual(
      new Set(["tape", "cord-and-ruler", "short-rule"]),
    );
    expect(new Set(torso.ways.map((way) => way.who))).toEqual(new Set(["self", "helper"]));
    expect(torso.slips.length).toBe(Math.max(...guides.map((guide) => guide.slips.length)));
    const directionOf = (code: string) => torso.slips.find((slip) => slip.code === code)?.size.direction;
    expect(directionOf("t1-for-c7")).toBe("-");
    expect(directionOf("c6-for-c7")).toBe("+");
    expect(directionOf("head-bent")).toBe("+");
    expect(directionOf("navel-for-crest")).toBe("+");
    expect(directionOf("tape-bridges-hollow")).toBe("-");
  });
});

describe("sizes of errors", () => {
  const sizes = [
    ...guides.flatMap((guide) =>
      guide.slips.map((slip) => ({ where: `${guide.id}/${slip.code}`, ...slip.size })),
    ),
    ...landmarks.flatMap((entry) =>
      entry.confusions.flatMap((confusion) =>
        confusion.shifts.map((shift) => ({ where: `${entry.id}/${confusion.name}`, ...shift })),
      ),
    ),
  ];

  test("there is one for each of more than a hundred slips and mistaken neighbours", () => {
    expect(sizes.length).toBeGreaterThan(100);
  });

  test.each(sizes)("$where has a direction and a range in millimetres", ({ direction, fromMm, toMm }) => {
    expect(["+", "-", "both"]).toContain(direction);
    expect(fromMm).toBeGreaterThanOrEqual(0);
    expect(toMm).toBeGreaterThan(fromMm);
    expect(toMm).toBeLessThan(1000);
  });

  test("a slip of a vertebra has the same size wherever it is told", () => {
    for (const [code, neighbour] of [
      ["t1-for-c7", "t1"],
      ["c6-for-c7", "c6"],
    ]) {
      const told = guides.flatMap((guide) =>
        guide.slips
          .filter((slip) => slip.code === code)
          .map(({ size }) => [size.direction, size.fromMm, size.toMm]),
      );
      const shifts = landmarks
        .filter((entry) => entry.id === "cervicale")
        .flatMap((entry) => entry.confusions.filter((confusion) => confusion.landmark === neighbour))
        .flatMap((confusion) => confusion.shifts.map((shift) => [shift.direction, shift.fromMm, shift.toMm]));
      expect(told).toHaveLength(3);
      expect(new Set([...told, ...shifts].map(String)).size).toBe(1);
    }
  });
});
