import { createEvidence, evidenceDefaults, type LearnedChart, learnProduct } from "@tapewise/afterwards";
import type { Checkpoint } from "./follow-maker.ts";
import { holds } from "./follow-prior.ts";
import type { Study, TruthRuns } from "./study.ts";
import type { Wrong } from "./wrong-share.ts";

/** What must hold, and whether it does. */
export interface Finding {
  readonly requirement: string;
  readonly holds: boolean;
  readonly figures: string;
}

const [LEAST, MOST] = [0.88, 0.92];
const MOST_LOSS = 0.02;

/** The figures of a study against what is required. */
export function findingsOf({ truths, honest, size }: Study): readonly Finding[] {
  const covered = size.checkpoints.map((outcomes) => ({ outcomes, ...coverage(truths, outcomes, "offset") }));
  const losses = size.checkpoints.map((outcomes) => ({ outcomes, ...loss(honest, outcomes) }));
  const shares = size.checkpoints.map((outcomes) => excess(truths, outcomes));
  return [
    {
      requirement: "the 90 % interval of the offset holds the truth in 88 to 92 % of the makers",
      holds: covered.every(({ share }) => share >= LEAST && share <= MOST),
      figures: covered
        .map(({ outcomes, share, error }) => `${outcomes} outcomes ${percent(share)} ± ${percent(error)}`)
        .join("; "),
    },
    {
      requirement:
        "so it does at each true offset, all widths taken together, within two standard errors of 88 to 92 %",
      holds: size.checkpoints.every((outcomes) =>
        offsetsOf(truths).every((offsetMm) => {
          const { share, error } = coverage(atOffset(truths, offsetMm), outcomes, "offset");
          return share + 2 * error >= LEAST && share - 2 * error <= MOST;
        }),
      ),
      figures: offsetsOf(truths)
        .map((offsetMm) => {
          const shares = size.checkpoints.map((outcomes) =>
            points(coverage(atOffset(truths, offsetMm), outcomes, "offset").share),
          );
          return `${offsetMm} mm: ${shares.join(", ")} %`;
        })
        .join("; "),
    },
    {
      requirement: "wrong sizes beyond the floor of a known offset get fewer with the outcomes",
      holds: shares.every((share, i) => i === 0 || share < (shares[i - 1] ?? 0)),
      figures: `${percent(excess(truths, 0))} by the printed chart; ${shares.map((share, i) => `${size.checkpoints[i]} outcomes ${percent(share)}`).join("; ")}`,
    },
    {
      requirement: "where a chart is as printed, wrong sizes rise by no more than 2 % of themselves",
      holds: losses.every(({ value }) => value <= MOST_LOSS),
      figures: losses
        .map(({ outcomes, value, error }) => `${outcomes} outcomes ${signed(value)} ± ${percent(error)}`)
        .join("; "),
    },
  ];
}

/** The whole report. */
export function reportStudy(study: Study): string {
  const { size, truths, honest, drawn } = study;
  const { checkpoints } = size;
  const heads = checkpoints.map((outcomes) => `${outcomes} outcomes`);
  const { backLength, ...others } = evidenceDefaults;
  return [
    "## What is required",
    "",
    ...findingsOf(study).map(
      (one) => `- ${one.holds ? "holds" : "**FAILS**"}: ${one.requirement}. ${one.figures}.`,
    ),
    "",
    `Model: offsets of makers N(0, ${backLength.makerOffsetSdMm}² mm²), of products about them ${backLength.productOffsetSdMm} mm, logarithms of widths ${backLength.makerLogWidthSd} and ${backLength.productLogWidthSd}, tolerance ${backLength.toleranceMm} mm, slips ${percent(others.slipProbability)}. The standard deviation of the whole, ${Math.hypot(backLength.makerOffsetSdMm, backLength.productOffsetSdMm).toFixed(1)} mm, is larger than that of the true offsets −20, −10, 0, 10, 20 mm (14.1 mm), so that the prior pulls little; that of the logarithms of widths matches those of the true widths.`,
    "",
    "## Wrong sizes, in per cent of those whom some size fits",
    "",
    `| true offset, mm | true width | printed chart | ${heads.join(" | ")} | offset known |`,
    `| ---: | ---: | ---: | ${heads.map(() => "---: |").join(" ")} ---: |`,
    ...truths.map(
      (runs) =>
        `| ${runs.truth.offsetMm} | ${runs.truth.widthFactor} | ${points(share(runs.byPrinted))} | ${checkpoints.map((at) => points(meanWrong(runs, at))).join(" | ")} | ${points(share(runs.byTruth))} |`,
    ),
    `| all | | ${points(mean(truths.map(({ byPrinted }) => share(byPrinted))))} | ${checkpoints.map((at) => points(mean(truths.map((runs) => meanWrong(runs, at))))).join(" | ")} | ${points(mean(truths.map(({ byTruth }) => share(byTruth))))} |`,
    "",
    `As printed, ${honest.runs.length} makers: ${points(share(honest.byPrinted))} by the printed chart; ${checkpoints.map((at) => `${points(meanWrong(honest, at))} after ${at}`).join(", ")}. The ranges are moved from ${percent(others.sureProbability)} certainty on that they are not as printed; that was so, wrongly, for ${checkpoints.map((at) => percent(mean(honest.runs.map((run) => (isMoved(run, at) ? 1 : 0))))).join(", ")} of these makers.`,
    "",
    "## From when on ranges are moved, in per cent of the makers",
    "",
    `| true offset, mm | ${heads.join(" | ")} |`,
    `| ---: | ${heads.map(() => "---: |").join(" ")}`,
    ...offsetsOf(truths).map((offsetMm) => {
      const runs = atOffset(truths, offsetMm).flatMap((one) => one.runs);
      return `| ${offsetMm} | ${checkpoints.map((at) => percent(mean(runs.map((run) => (isMoved(run, at) ? 1 : 0))))).join(" | ")} |`;
    }),
    "",
    "## Coverage of the 90 % intervals, truth by truth, in per cent",
    "",
    `| true offset, mm | ${heads.map((head) => `offset, ${head}`).join(" | ")} |`,
    `| ---: | ${heads.map(() => "---: |").join(" ")}`,
    ...offsetsOf(truths).map((offsetMm) => {
      const some = atOffset(truths, offsetMm);
      return `| ${offsetMm} | ${checkpoints.map((at) => points(coverage(some, at, "offset").share)).join(" | ")} |`;
    }),
    `| all | ${checkpoints.map((at) => points(coverage(truths, at, "offset").share)).join(" | ")} |`,
    "",
    `| true width | ${heads.map((head) => `width, ${head}`).join(" | ")} |`,
    `| ---: | ${heads.map(() => "---: |").join(" ")}`,
    ...[...new Set(truths.map(({ truth }) => truth.widthFactor))].map((widthFactor) => {
      const some = truths.filter(({ truth }) => truth.widthFactor === widthFactor);
      return `| ${widthFactor} | ${checkpoints.map((at) => points(coverage(some, at, "width").share)).join(" | ")} |`;
    }),
    `| all | ${checkpoints.map((at) => points(coverage(truths, at, "width").share)).join(" | ")} |`,
    "",
    "## Coverage at each pair of offset and width, in per cent",
    "",
    `One standard error is ${points(Math.sqrt((0.9 * 0.1) / size.makers))} at 90 %.`,
    "",
    `| true offset, mm | true width | ${heads.map((head) => `offset, ${head}`).join(" | ")} | ${heads.map((head) => `width, ${head}`).join(" | ")} |`,
    `| ---: | ---: | ${heads.map(() => "---: | ---: |").join(" ")}`,
    ...truths.map((runs) => {
      const { offsetMm, widthFactor } = runs.truth;
      const shares = (of: "offset" | "width") =>
        checkpoints.map((at) => points(coverage([runs], at, of).share)).join(" | ");
      return `| ${offsetMm} | ${widthFactor} | ${shares("offset")} | ${shares("width")} |`;
    }),
    "",
    "No interval that goes by a prior covers every single truth as often as it says: it covers what the prior expects more often, and what it does not expect less often, until outcomes outweigh it. How much they have told is the standard deviation that is left, as a share of the one before any outcome:",
    "",
    `| | ${heads.join(" | ")} |`,
    `| --- | ${heads.map(() => "---: |").join(" ")}`,
    ...(["offset", "width"] as const).map(
      (of) => `| ${of} | ${checkpoints.map((at) => shareLeft(truths, at, of).toFixed(2)).join(" | ")} |`,
    ),
    "",
    `Of the width, 10 outcomes tell next to nothing: its interval is then nearly the one before any outcome, ${widthsBefore()}, and its share says where in that a true width lies (1 in the middle, 0.8 and 1.2 towards the ends) and not how good the interval is. No choice of a prior changes that; over makers that are drawn from the model, below, it is right. Of the offset 10 outcomes tell most of what there is.`,
    "",
    "## Coverage where makers and products are drawn from the model, in per cent",
    "",
    `Three products a maker, ${size.drawnMakers} makers a row; the fresh product is a fourth one that nobody reported anything of.`,
    "",
    "| outcomes a product | maker's offset | maker's width | product's offset | product's width | fresh product's offset |",
    "| ---: | ---: | ---: | ---: | ---: | ---: |",
    ...drawn.map(({ outcomes, held }) => {
      const of = (key: "makerOffset" | "makerWidth" | "productOffset" | "productWidth" | "freshOffset") =>
        points(mean(held.map((one) => (one[key] ? 1 : 0))));
      return `| ${outcomes} | ${of("makerOffset")} | ${of("makerWidth")} | ${of("productOffset")} | ${of("productWidth")} | ${of("freshOffset")} |`;
    }),
  ].join("\n");
}

function at(run: readonly Checkpoint[], outcomes: number): Checkpoint {
  const found = run.find((one) => one.outcomes === outcomes);
  if (found === undefined) throw new Error(`nothing was looked at after ${outcomes} outcomes`);
  return found;
}

function isMoved(run: readonly Checkpoint[], outcomes: number): boolean {
  return 1 - at(run, outcomes).learned.asPrintedProbability >= evidenceDefaults.sureProbability;
}

/** Share of the intervals that hold the truth, with its standard error. */
export function coverage(truths: readonly TruthRuns[], outcomes: number, of: "offset" | "width") {
  const hits = truths.flatMap(({ truth, runs }) =>
    runs.map((run): number => {
      const { offsetMm, widthFactor } = at(run, outcomes).learned;
      return (of === "offset" ? holds(offsetMm, truth.offsetMm) : holds(widthFactor, truth.widthFactor))
        ? 1
        : 0;
    }),
  );
  const share = mean(hits);
  return { share, error: Math.sqrt((share * (1 - share)) / hits.length) };
}

function offsetsOf(truths: readonly TruthRuns[]): readonly number[] {
  return [...new Set(truths.map(({ truth }) => truth.offsetMm))];
}

function atOffset(truths: readonly TruthRuns[], offsetMm: number): readonly TruthRuns[] {
  return truths.filter(({ truth }) => truth.offsetMm === offsetMm);
}

/** The standard deviation that is left after some outcomes, as a share of the one before any, on average. */
function shareLeft(truths: readonly TruthRuns[], outcomes: number, of: "offset" | "width"): number {
  const sdOf = ({ offsetMm, widthFactor }: LearnedChart): number =>
    of === "offset" ? offsetMm.sd : widthFactor.sd / widthFactor.mean;
  const before = sdOf(learnProduct(createEvidence(), { product: "" }, "torso-length"));
  return mean(truths.flatMap(({ runs }) => runs.map((run) => sdOf(at(run, outcomes).learned)))) / before;
}

/** The interval of the width before any outcome. */
function widthsBefore(): string {
  const { lower, upper } = learnProduct(createEvidence(), { product: "" }, "torso-length").widthFactor;
  return `${lower.toFixed(2)} to ${upper.toFixed(2)} times what is printed`;
}

function meanWrong({ runs }: TruthRuns, outcomes: number): number {
  return mean(runs.map((run) => share(at(run, outcomes).wrong)));
}

/** Mean over the truths of the share of wrong sizes less that of the floor; 0 outcomes stand for the printed chart. */
function excess(truths: readonly TruthRuns[], outcomes: number): number {
  return mean(
    truths.map(
      (runs) => (outcomes === 0 ? share(runs.byPrinted) : meanWrong(runs, outcomes)) - share(runs.byTruth),
    ),
  );
}

/** Relative rise of the wrong sizes, with its standard error over the makers. */
function loss(honest: TruthRuns, outcomes: number) {
  const base = share(honest.byPrinted);
  const rises = honest.runs.map((run) => share(at(run, outcomes).wrong) / base - 1);
  const value = mean(rises);
  const variance = mean(rises.map((rise) => (rise - value) ** 2));
  return { value, error: Math.sqrt(variance / rises.length) };
}

function share({ people, wrong }: Wrong): number {
  return wrong / people;
}

function mean(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0) / values.length;
}

function percent(value: number): string {
  return `${(value * 100).toFixed(1)} %`;
}

function signed(value: number): string {
  return `${value < 0 ? "−" : "+"}${percent(Math.abs(value))}`;
}

function points(value: number): string {
  return (value * 100).toFixed(1);
}
