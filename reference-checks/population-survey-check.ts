// npm run check:survey -- --people FOLDER
//
// Holds the carried reference figures and the models against the individual measurements of the survey, which
// are not part of the project: ansur-ii-female-even-subjects.csv and ansur-ii-male-even-subjects.csv, the public
// data of ANSUR II (Gordon et al. 2014, NATICK/TR-15/007), people with even subject numbers. The folder may also
// stand in the environment variable TAPEWISE_PEOPLE. Ends with 0 when all checks passed, 1 when one failed, and 2,
// after saying so, when nothing could be checked.
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { interval } from "@tapewise/intervals";
import {
  andersonDarling,
  chooseFamily,
  empiricalJoint,
  fitDistribution,
  qqPoints,
  readSurvey,
  referencePopulation,
  referenceTable,
  type Survey,
  samplePercentile,
  surveySample,
  withLognormal,
} from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { ansurFigures } from "./landmarks-ansur.ts";

const files = {
  women: "ansur-ii-female-even-subjects.csv",
  men: "ansur-ii-male-even-subjects.csv",
} as const;
type Cut = keyof typeof files;

let failures = 0;
function check(what: string, passed: boolean, figures: string): void {
  if (!passed) failures += 1;
  console.log(`${passed ? "passed" : "FAILED"}  ${what}: ${figures}`);
}

function readPeople(folder: string, cut: Cut): Survey {
  const mm = (column: string) => ({ column, unit: "mm" as const });
  return readSurvey(readFileSync(join(folder, files[cut]), "latin1"), {
    about: { label: cut, source: "ANSUR II", caveat: "soldiers" },
    dimensions: {
      "torso-length": { column: "cervicaleheight", minus: "iliocristaleheight", unit: "mm" },
      stature: mm("stature"),
      "cervicale-height": mm("cervicaleheight"),
      "iliac-crest-height": mm("iliocristaleheight"),
      "suprasternale-height": mm("suprasternaleheight"),
      "back-waist-length": mm("waistbacklength"),
      "shoulder-length": mm("shoulderlength"),
      "shoulder-breadth": mm("biacromialbreadth"),
      "bideltoid-breadth": mm("bideltoidbreadth"),
      "interscye-breadth": mm("interscyei"),
      "chest-girth": mm("chestcircumference"),
      "waist-girth": mm("waistcircumference"),
      "hip-girth": mm("buttockcircumference"),
    },
    mass: { column: "weightkg", kilogramsPerUnit: 0.1 },
    id: "subjectid",
  });
}

function checkFigures(cut: Cut, survey: Survey): void {
  for (const row of referenceTable(cut)) {
    const { values } = surveySample(survey, row.variable);
    const { mean, variance } = fitDistribution("normal", values).distribution;
    const sd = Math.sqrt((variance * values.length) / (values.length - 1));
    const quantiles = row.quantiles.map(({ share, value }) =>
      Math.abs(samplePercentile(values, share, 7) - value),
    );
    const off = Math.max(Math.abs(mean - row.mean), Math.abs(sd - row.sd), ...quantiles);
    const figures = `mean ${mean.toFixed(2)}, sd ${sd.toFixed(2)} ${row.unit}, carried figures off by at most ${off.toExponential(1)}`;
    check(`${cut}, ${row.variable}`, values.length === row.people && off < 1e-3, figures);

    const all = ansurFigures.find(
      ({ column, sex, sample }) => column === row.column && sex === cut && sample === "all",
    );
    if (all === undefined) continue;
    const stray = sd * Math.sqrt((1 - values.length / all.n) / values.length);
    const apart = Math.abs(mean - all.sum / all.n) / stray;
    const apartSd = Math.abs(sd - all.sd) / (stray / Math.SQRT2);
    check(
      `${cut}, ${row.variable}, against all ${all.n} people`,
      apart < 4 && apartSd < 4,
      `mean ${apart.toFixed(1)} and sd ${apartSd.toFixed(1)} half-sample errors off`,
    );
  }
}

/** What is found is told; that it is found as documented is checked. */
function checkTorso(cut: Cut, survey: Survey): void {
  const { values } = surveySample(survey, "torso-length");
  const fit = fitDistribution("normal", values);
  const { adjusted, pValue } = andersonDarling(values, fit);
  const inner = qqPoints(values, fit.distribution).filter(({ share }) => share >= 0.01 && share <= 0.99);
  const widest = Math.max(...inner.map(({ expected, observed }) => Math.abs(observed - expected)));
  const ranked = chooseFamily(values).map(({ fit: each, behind }) => `${each.family} +${behind.toFixed(1)}`);
  const expected = cut === "women" ? pValue > 0.1 : pValue < 0.01;
  check(
    `${cut}, normality of torso length as documented`,
    expected && widest < 6,
    `adjusted A² ${adjusted.toFixed(3)}, p ${pValue.toFixed(4)}; quantiles from 1 % to 99 % within ${widest.toFixed(1)} mm of a normal curve; AIC ${ranked.join(", ")}`,
  );
}

/** Shares of people in pairs of ranges, counted and by model. */
function checkShares(cut: Cut, survey: Survey): void {
  const variables = ["torso-length", "waist-girth"] as const;
  const people = empiricalJoint({
    about: survey.about,
    variables,
    people: survey.people.map(({ values }) => variables.map((variable) => values[variable] ?? 0)),
  });
  const normal = referencePopulation(cut).marginal(variables);
  const models = { normal, "lognormal girth": withLognormal(normal, ["waist-girth"]) };
  const shares = [0, 0.1, 0.3, 0.5, 0.7, 0.9];
  const edges = (variable: (typeof variables)[number]): number[] =>
    shares.map((share) => people.distribution(variable).quantile(share) + 0.5);
  for (const [name, model] of Object.entries(models)) {
    let widest = 0;
    for (const torso of edges("torso-length")) {
      for (const waist of edges("waist-girth")) {
        const box = {
          "torso-length": interval(torso, torso + 50),
          "waist-girth": interval(waist, waist + 150),
        };
        const apart = model.boxProbability(box).probability - people.boxProbability(box).probability;
        widest = Math.max(widest, Math.abs(apart));
      }
    }
    check(
      `${cut}, share within a torso range of 50 mm and a waist range of 150 mm, ${name} model`,
      widest < 0.05,
      `at most ${(100 * widest).toFixed(1)} percentage points from the count`,
    );
  }
}

function checkConditional(cut: Cut, survey: Survey): void {
  const model = referencePopulation(cut).marginal(["stature", "torso-length"]);
  const inside = survey.people.filter(({ values }) => {
    const given = model
      .conditional({ stature: millimetres(values.stature ?? 0) })
      .distribution("torso-length");
    const torso = values["torso-length"] ?? 0;
    return torso > given.quantile(0.05) && torso < given.quantile(0.95);
  });
  const share = inside.length / survey.people.length;
  const error = Math.sqrt(0.09 / survey.people.length);
  check(
    `${cut}, torso length within the 90 % expected for the own stature`,
    Math.abs(share - 0.9) < 4 * error,
    `${(100 * share).toFixed(1)} % of people`,
  );
}

const { values: options } = parseArgs({ options: { people: { type: "string" } } });
const folder = options.people ?? process.env.TAPEWISE_PEOPLE;
const missing = Object.values(files).filter(
  (file) => folder === undefined || !existsSync(join(folder, file)),
);
if (folder === undefined || missing.length > 0) {
  const reason = folder === undefined ? "no folder was named" : `${folder} lacks ${missing.join(" and ")}`;
  console.log(`DID NOT RUN: ${reason}. Nothing was checked. Use: npm run check:survey -- --people FOLDER`);
  process.exitCode = 2;
} else {
  for (const cut of ["women", "men"] as const) {
    const survey = readPeople(folder, cut);
    checkFigures(cut, survey);
    checkTorso(cut, survey);
    checkShares(cut, survey);
    checkConditional(cut, survey);
  }
  console.log(
    "did not run  the digits printed in NATICK/TR-15/007: they are of everybody, and only the even subject numbers are at hand",
  );
  console.log(failures === 0 ? "every check that ran passed" : `${failures} checks FAILED`);
  process.exitCode = failures === 0 ? 0 : 1;
}
