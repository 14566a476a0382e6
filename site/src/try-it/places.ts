import type { ExampleId } from "./examples.ts";

/** Where an example stands, and which functions of the reference it shows in use. */
export interface ExamplePlace {
  /** The address of the page below the base. */
  readonly page: string;
  /** The addresses of the functions below that of the reference. */
  readonly functions: readonly string[];
}

export const places: Readonly<Record<ExampleId, ExamplePlace>> = {
  "choose-size": {
    page: "tutorials/retail-feature/",
    functions: ["fit/src/functions/recommend", "tapewise/src/batch/functions/safereadperson"],
  },
  "read-chart": {
    page: "reference/chart-format/",
    functions: [
      "charts/src/functions/safeparsechart",
      "charts/src/functions/parsechart",
      "charts/src/functions/auditchart",
    ],
  },
  "choose-for-table": {
    page: "how-to/many-people/",
    functions: ["tables/src/functions/readtable", "tapewise/src/batch/functions/chooseline"],
  },
  "average-readings": {
    page: "explanation/error-budget/",
    functions: [
      "measurement/src/functions/safeestimate",
      "measurement/src/functions/parseestimate",
      "measurement/src/functions/safereadreadings",
    ],
  },
  "who-is-served": {
    page: "how-to/who-is-left-out/",
    functions: ["coverage/src/functions/chartcoverage", "population/src/functions/referencepopulation"],
  },
  "study-error": {
    page: "how-to/reliability-study/",
    functions: [
      "measurement/src/functions/safetechnicalerror",
      "measurement/src/functions/safeparsestudy",
      "measurement/src/functions/parsestudy",
    ],
  },
  "read-length": {
    page: "how-to/inches-and-fractions/",
    functions: ["units/src/functions/safeparselength", "units/src/functions/parselength"],
  },
};
