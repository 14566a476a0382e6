import { correctChart, createEvidence, evidenceDefaults, learnProduct } from "@tapewise/afterwards";
import { createRandom } from "@tapewise/statistics";
import { drawCrew, pickFor } from "/work/main/reference-checks/exchange-evidence/crew.ts";
import { liveThrough, printed, trueChart } from "/work/main/reference-checks/exchange-evidence/makers.ts";

const [mo, po, mw, pw, makers, last, asP] = process.argv.slice(2).map(Number);
const model = {
  ...evidenceDefaults,
  asPrintedProbability: asP ?? 0.5,
  backLength: {
    ...evidenceDefaults.backLength,
    makerOffsetSdMm: mo,
    productOffsetSdMm: po,
    makerLogWidthSd: mw,
    productLogWidthSd: pw,
    reachMm: Number(process.env.REACH ?? 45),
  },
};
const random = createRandom(1);
const crew = drawCrew(3000, random.fork("crew"));
const cache = new Map();
const pick = (m, chart) => {
  if (chart !== printed) return pickFor(m, chart);
  let p = cache.get(m);
  if (p === undefined) cache.set(m, (p = pickFor(m, chart)));
  return p;
};
const cps = [10, 30, 100, 300].filter((n) => n <= last);
const rows = {};
for (const offsetMm of [-20, -10, 0, 10, 20])
  for (const widthFactor of [0.8, 1, 1.2]) {
    const actual = trueChart({ offsetMm, widthFactor });
    const t = (rows[`${offsetMm} ${widthFactor}`] = cps.map(() => ({
      o: 0,
      w: 0,
      mv: 0,
      sd: 0,
      len: 0,
      wsd: 0,
      below: 0,
      above: 0,
    })));
    for (let i = 0; i < makers; i++) {
      const r = createRandom(1).fork(`x ${offsetMm} ${widthFactor}`).fork(i);
      const ev = createEvidence(model);
      let chart = printed;
      for (let n = 0; n < last; ) {
        const m = crew[r.integer(0, crew.length - 1)];
        const seen = liveThrough(m, pick(m, chart), printed, actual, r);
        if (!seen) continue;
        ev.add(seen);
        n++;
        if (n % 10 === 0) {
          chart = correctChart(printed, ev).chart;
          const k = cps.indexOf(n);
          if (k >= 0) {
            const l = learnProduct(
              ev,
              { maker: "Gingham Clockwork", product: printed.chart },
              "torso-length",
            );
            const c = t[k];
            if (l.offsetMm.lower <= offsetMm && offsetMm <= l.offsetMm.upper) c.o++;
            else if (offsetMm < l.offsetMm.lower) c.below++;
            else c.above++;
            if (l.widthFactor.lower <= widthFactor && widthFactor <= l.widthFactor.upper) c.w++;
            if (chart !== printed) c.mv++;
            c.len += l.offsetMm.sd;
            c.wsd += l.widthFactor.sd / l.widthFactor.mean;
          }
        }
      }
    }
  }
const f = (x) => ((100 * x) / makers).toFixed(1).padStart(6);
console.log("model", mo, po, mw, pw, "makers", makers, "asP", asP);
for (const [k, t] of Object.entries(rows))
  console.log(
    k.padEnd(8),
    "off",
    t.map((c) => f(c.o)).join(""),
    " wid",
    t.map((c) => f(c.w)).join(""),
    " moved",
    t.map((c) => f(c.mv)).join(""),
    " sd",
    t.map((c) => (c.len / makers).toFixed(1)).join(" "),
    " wsd",
    t.map((c) => (c.wsd / makers).toFixed(3)).join(" "),
  );
for (const o of [-20, -10, 0, 10, 20])
  console.log(
    "offset",
    o,
    cps.map((_, k) => f([0.8, 1, 1.2].reduce((s, w) => s + rows[`${o} ${w}`][k].o, 0) / 3)).join(""),
    " low/high miss",
    cps
      .map(
        (_, k) =>
          f([0.8, 1, 1.2].reduce((s, w) => s + rows[`${o} ${w}`][k].below, 0) / 3) +
          "/" +
          f([0.8, 1, 1.2].reduce((s, w) => s + rows[`${o} ${w}`][k].above, 0) / 3),
      )
      .join(" "),
  );
console.log(
  "all",
  cps.map((_, k) => f(Object.values(rows).reduce((s, t) => s + t[k].o, 0) / 15)).join(""),
  "width",
  cps.map((_, k) => f(Object.values(rows).reduce((s, t) => s + t[k].w, 0) / 15)).join(""),
);
