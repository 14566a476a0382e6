import { parseStudy, safeParseStudy, studyPage, summariseStudy } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { ANN_AND_BEN } from "../class-study.ts";
import { expectWellFormed } from "./picture.ts";

const page = studyPage({
  study: ANN_AND_BEN,
  report: summariseStudy(ANN_AND_BEN),
  issues: [],
  unit: "cm",
  name: "evening <1>",
});

test("is one file that needs no other and runs nothing", () => {
  expectWellFormed(page);
  expect(page.startsWith("<!doctype html>\n")).toBe(true);
  expect(page).toContain('<html lang="en">');
  expect(page.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(
    /https?:|<script|<link|@import|url\(|src=|\son\w+=/,
  );
  expect(page).toContain("default-src 'none'");
  expect(page).not.toMatch(/NaN|Infinity|undefined/);
});

test("reads on light and dark, and prints", () => {
  expect(page).toContain('content="light dark"');
  expect(page).toContain("@media print");
});

test("has a table beside each picture, each picture with ids of its own", () => {
  const pictures = page.split("<figure>").slice(1);
  expect(pictures).toHaveLength(3);
  for (const after of pictures) expect(after).toMatch(/^<svg .*?<\/svg><\/figure>\n<div [^>]*><table>/s);
  const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(page).toContain("<h1>Reliability of the torso length: evening &lt;1&gt;</h1>");
});

test("tells what was found in reading", () => {
  const outcome = safeParseStudy(
    "subject,torso A1 (cm),torso A2 (cm)\nmia,43,43.4\nleo,4.8,48\nana,45,45.2\n",
  );
  const study = unwrap(outcome);
  const told = studyPage({ study, report: summariseStudy(study), issues: outcome.issues, unit: "in" });
  expect(told).toContain("What was found in reading");
  expect(told).toContain("4.8, reading 1 of leo by A, is outside what the torso length can be");
});

test("a study that tells next to nothing has a page too", () => {
  const study = parseStudy("subject,A1 (cm)\nmia,43\n");
  const told = studyPage({ study, report: summariseStudy(study), issues: [], unit: "cm" });
  expectWellFormed(told);
  expect(told).toContain("<h1>Reliability of readings</h1>");
  expect(told).toContain("What the study cannot tell");
});
