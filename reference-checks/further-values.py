"""Recomputes further-values.json: python3 further-values.py > further-values.json

Figures of many functions by other programmes and by formulas programmed anew: SciPy, NumPy, mpmath and exact
fractions. Every input stands in the JSON beside what it gives. Needs numpy, scipy and mpmath; the tests need only
the JSON file.
"""

import itertools
import json
import math
import random
import sys
from fractions import Fraction

import mpmath
import numpy
import scipy
from mpmath import mpf
from scipy import stats

mpmath.mp.dps = 40


def text(x):
    return mpmath.nstr(mpf(x), 20)


def phi(z):
    return mpmath.npdf(z)


def cdf(z):
    return mpmath.ncdf(z)


# --- statistics -------------------------------------------------------------------------------------------------


def t_density(t, df):
    t, df = mpf(t), mpf(df)
    return mpmath.exp(
        mpmath.loggamma((df + 1) / 2) - mpmath.loggamma(df / 2) - (df + 1) / 2 * mpmath.log1p(t * t / df)
    ) / mpmath.sqrt(df * mpmath.pi)


def exact_moments(values):
    n = len(values)
    f = [Fraction(v) for v in values]
    mean = sum(f) / n
    return {"count": n, "mean": mean, "sd": mpmath.sqrt(mpf((s := sum((x - mean) ** 2 for x in f) / (n - 1)).numerator) / s.denominator)}


def fraction_text(f):
    return text(mpf(f.numerator) / f.denominator)


RANDOM = random.Random(20)
SAMPLES = [[round(RANDOM.gauss(430, 25), 1) for _ in range(n)] for n in (2, 3, 8, 21, 40)]
statistics = {
    "studentTPdf": [{"t": t, "df": df, "value": text(t_density(t, df))} for df in (0.5, 1.0, 3.0, 8.0, 30.5, 1000.0, 1e6) for t in (0.0, 0.25, 1.5, -4.0, 20.0)],
    "median": [{"values": s, "value": float(numpy.median(s))} for s in SAMPLES],
    "merge": [
        {"first": a, "second": b, "mean": fraction_text(exact_moments(a + b)["mean"]), "sd": text(exact_moments(a + b)["sd"])}
        for a, b in itertools.pairwise(SAMPLES)
    ],
    # Decimals as they are written, less the first of them.
    "decimalDifferences": [
        {"values": v, "from": v[0], "differences": [fraction_text(Fraction(str(x)) - Fraction(str(v[0]))) for x in v]}
        for v in ([1e12 + 0.4, 1e12 + 0.3, 1e12 + 0.5], [0.1, 0.3, -0.7], [430.1, 430.2, 429.9])
    ],
    "integrals": [
        {"name": "square", "to": 3.0, "value": "9"},
        {"name": "exponential", "to": 2.0, "value": text(mpmath.e**2 - 1)},
        {"name": "cosine", "to": 1.5, "value": text(mpmath.sin(mpf("1.5")))},
    ],
    # P(X within ±1 is false, Y = X + e within limits true): JCGM 106 risks, X normal, e normal.
    "falseAccept": [],
}


def risk(sp, se, tolerance, acceptance):
    """P(|X| > T and |Y| <= A) and P(|X| <= T and |Y| > A) by quadrature over X."""
    sp, se, T, A = map(mpf, (sp, se, tolerance, acceptance))
    inside = lambda x: cdf((A - x) / se) - cdf((-A - x) / se)
    f = lambda x: phi(x / sp) / sp * inside(x)
    g = lambda x: phi(x / sp) / sp * (1 - inside(x))
    cuts = [T + k * se for k in range(0, 14)]
    pfa = 2 * mpmath.quad(f, cuts)
    steps = sorted({mpf(0), *[max(mpf(0), T - k * se) for k in range(0, 14)]})
    pfr = 2 * mpmath.quad(g, steps)
    return pfa, pfr


for itp, printed in (("0.7", "3.92234109"), ("0.8", "2.85583037"), ("0.95", "0.87100925"), ("0.99", "0.19991684")):
    sp = 1 / (mpmath.sqrt(2) * mpmath.erfinv(mpf(itp)))
    se = sp / 4
    pfa, pfr = risk(sp, se, 1, 1)
    statistics["falseAccept"].append({"itp": itp, "sd": text(sp), "errorSd": text(se), "tolerance": 1, "acceptance": 1, "falseAccept": text(pfa), "falseReject": text(pfr), "printedPercent": printed})
for sd, error, tolerance, acceptance, printed in ((1, 0.5, 2, 1.82, "0.8"), (1, 0.25, 2.5, 2.5, "0.25")):
    pfa, pfr = risk(sd, error, tolerance, acceptance)
    statistics["falseAccept"].append({"sd": text(sd), "errorSd": text(error), "tolerance": tolerance, "acceptance": acceptance, "falseAccept": text(pfa), "falseReject": text(pfr), "printedPercent": printed})

# --- intervals: sets of places; whole numbers are even places, what lies between them odd ones ------------------

LOW, HIGH = -8, 40


def places(ends):
    a, b, left, right = ends
    lo = LOW if a is None else 2 * a + (0 if left else 1)
    hi = HIGH if b is None else 2 * b - (0 if right else 1)
    return frozenset(range(lo, hi + 1))


def pieces(s):
    """Runs of places as intervals [from, to, closed, closed]; null for an open end."""
    out, run = [], []
    for p in [*sorted(s), None]:
        if run and (p is None or p != run[-1] + 1):
            lo, hi = run[0], run[-1]
            left = None if lo == LOW else lo // 2
            right = None if hi == HIGH else (hi + 1) // 2
            out.append([left, right, lo % 2 == 0 and lo != LOW, hi % 2 == 0 and hi != HIGH])
            run = []
        run.append(p)
    return out


def contact(A, B, a, b):
    if A & B:
        one = len(A & B) == 1 and (a[1] == b[0] or b[1] == a[0])
        return "shared-end" if one else "overlapping"
    first, second = (A, B) if max(A) < min(B) else (B, A)
    hole = range(max(first) + 1, min(second))
    return "adjacent" if len(hole) == 0 else "split-by-point" if len(hole) == 1 else "apart"


def length(s):
    return sum(1 for p in s if p % 2 == 1)


def some_interval(r):
    while True:
        a, b = sorted((r.randint(0, 15), r.randint(0, 15)))
        left, right = r.random() < 0.5, r.random() < 0.5
        if a < b or (left and right):
            return [a, b, left, right]


r = random.Random(3)
sets = []
for _ in range(60):
    a, b = some_interval(r), some_interval(r)
    A, B = places(a), places(b)
    many = [some_interval(r) for _ in range(r.randint(1, 3))]
    others = [some_interval(r) for _ in range(r.randint(1, 3))]
    M = frozenset().union(*map(places, many))
    O = frozenset().union(*map(places, others))
    hull = range(min(M), max(M) + 1)
    x = r.randint(-1, 16)
    hull_ab = frozenset(range(min(A | B), max(A | B) + 1))
    sets.append(
        {
            "a": a, "b": b, "many": many, "others": others, "x": x,
            "complement": pieces(frozenset(range(LOW, HIGH + 1)) - M),
            "contains": 2 * x in A,
            "unionContains": 2 * x in M,
            "distance": 0 if 2 * x in A else (max(a[0] - x, x - a[1], 0)),
            "equals": A == B,
            "union": pieces(M),
            "unionLength": length(M),
            "intersect": pieces(A & B),
            "intersectUnions": pieces(M & O),
            "subtract": pieces(M - O),
            "gaps": pieces(frozenset(hull) - M),
            "shareCovered": None if length(A) == 0 else [length(A & M), length(A)],
            "hull": pieces(hull_ab),
            "middle": [a[0] + a[1], 2],
            "length": a[1] - a[0],
            "overlapLength": length(A & B),
            "contact": contact(A, B, a, b),
        }
    )

# --- measurement ------------------------------------------------------------------------------------------------

# The table of defaults, typed in again: handling, finding, lasting of a length along the body.
HANDS = {"self": (6, 5, 5), "helper": (4, 3, 3)}
HALF = {"tape": mpf("0.003"), "cord-and-ruler": mpf("0.01"), "short-rule": mpf("0.001")}


def parts(hand, tool, length_mm, afresh, rule=300):
    """Variances of one reading that average out and that last (scale rectangular)."""
    handling, finding, lasting = map(mpf, HANDS[hand])
    scale = (HALF[tool] * length_mm) ** 2 / 3
    extra = {"tape": mpf(0), "cord-and-ruler": 2 * mpf(4), "short-rule": mpf(4) * max(0, math.ceil(length_mm / rule) - 1)}[tool]
    averages = handling**2 + extra + (finding**2 if afresh else 0)
    lasts = lasting**2 + scale + (0 if afresh else finding**2)
    return averages, lasts


def rounding_correlation(sd, step):
    """Mean of 1 − 6u + 6u² over the difference of two readings, u its part beyond whole steps."""
    s = mpmath.sqrt(2) * sd / step
    return mpmath.nsum(lambda k: 6 / mpmath.pi**2 / k**2 * mpmath.exp(-2 * (mpmath.pi * k * s) ** 2), [1, mpmath.inf])


anticipated = []
for hand, tool, n, step, afresh in itertools.product(("self", "helper"), HALF, (1, 3, 6), (1, 5, 10), (False, True)):
    averages, lasts = parts(hand, tool, 430, afresh)
    rho = rounding_correlation(mpmath.sqrt(averages), step)
    rounding = mpf(step) ** 2 / 12
    lasting = lasts + rounding * rho
    shrinking = averages + rounding * (1 - rho)
    anticipated.append(
        {
            "measuredBy": hand, "tool": tool, "count": n, "stepMm": step, "landmarksFoundAfresh": afresh,
            "uncertaintyMm": text(mpmath.sqrt(lasting + shrinking / n)),
            "perReadingMm": text(mpmath.sqrt(shrinking)),
            "lastingMm": text(mpmath.sqrt(lasting)),
        }
    )

readings = [431.2, 428.0, 436.5, 430.1, 433.9, 427.2, 439.4]
running = []
for k in range(1, len(readings) + 1):
    part = numpy.array(readings[:k])
    half = None if k == 1 else float(stats.t.ppf(0.975, k - 1) * part.std(ddof=1) / math.sqrt(k))
    running.append({"mean": float(part.mean()), "median": float(numpy.median(part)), "sd": None if k == 1 else float(part.std(ddof=1)), "lower": None if half is None else float(part.mean() - half), "upper": None if half is None else float(part.mean() + half)})

histogram_values = [round(RANDOM.gauss(430, 9), 1) for _ in range(80)]
low = math.floor(min(histogram_values) / 5) * 5
counts, edges = numpy.histogram(histogram_values, bins=numpy.arange(low, max(histogram_values) + 5.0001, 5))

digits_cm = [round(RANDOM.uniform(38, 52) * 2) / 2 if RANDOM.random() < 0.4 else round(RANDOM.uniform(38, 52), 1) for _ in range(60)]
digit_counts = [0] * 10
for value in digits_cm:
    digit_counts[round(value * 10) % 10] += 1
chi, p = stats.chisquare(digit_counts)

trend_rows = [[430 + 7 * i + 1.5 * r + RANDOM.gauss(0, 2) for r in range(4)] for i in range(6)]
trend_rows = [[round(v) for v in row] for row in trend_rows]
xs, ys, cells = [], [], []
for i, row in enumerate(trend_rows):
    for rep, v in enumerate(row):
        xs.append(rep + 1)
        ys.append(v)
        cells.append(i)
design = numpy.column_stack([[1.0 if c == i else 0.0 for c in cells] for i in range(6)] + [xs])
beta, rss, _, _ = numpy.linalg.lstsq(design, numpy.array(ys, float), rcond=None)
df = len(ys) - 7
se = math.sqrt(rss[0] / df * numpy.linalg.inv(design.T @ design)[-1, -1])
tq = stats.t.ppf(0.975, df)

variances = [{"variance": v, "degreesOfFreedom": d} for v, d in ((4.1, 3), (6.3, 3), (29.4, 3), (2.2, 2), (5.0, 4))]
total_df = sum(v["degreesOfFreedom"] for v in variances)
total_ss = sum(v["variance"] * v["degreesOfFreedom"] for v in variances)
cochran = []
for v in variances:
    d, others = v["degreesOfFreedom"], total_df - v["degreesOfFreedom"]
    share = v["variance"] * d / total_ss
    cochran.append((min(1, len(variances) * stats.f.sf(others * share / (d * (1 - share)), d, others)), share, 1 / (1 + others / d / stats.f.ppf(1 - 0.05 / len(variances), d, others))))
worst = min(range(len(cochran)), key=lambda i: cochran[i][0])


def mls(parts_, confidence):
    down = up = value = 0
    for w, ms, d in parts_:
        part = w * ms
        value += part
        down += (part * (1 - d / stats.chi2.ppf((1 + confidence) / 2, d))) ** 2
        up += (part * (d / stats.chi2.ppf((1 - confidence) / 2, d) - 1)) ** 2
    return {"value": value, "lower": max(0, value - math.sqrt(down)), "upper": value + math.sqrt(up)}


MLS = [([(1, 4, 10)], 0.95), ([(0.5, 12.5, 9), (0.5, 3.25, 10)], 0.95), ([(0.25, 90, 7), (0.25, 8, 16), (0.5, 4.5, 24)], 0.9)]


def chance_of_right(sizes, mean, sd, u):
    """∫ φ(l) P(picked | l) dl: the measured value picks the size between midpoints of neighbouring ends."""
    cuts = [-mpmath.inf] + [(mpf(sizes[i][1]) + sizes[i + 1][0]) / 2 for i in range(len(sizes) - 1)] + [mpmath.inf]
    total = mpf(0)
    for (lo, hi), a, b in zip(sizes, cuts, cuts[1:]):
        def f(l, a=a, b=b):
            return phi((l - mean) / sd) / sd * (cdf((b - l) / u) - cdf((a - l) / u))
        total += mpmath.quad(f, [lo + (mpf(hi) - lo) * k / 16 for k in range(17)])
    return total


plan_sizes = [(380, 435), (425, 480), (470, 530)]
plan_chances = {n: chance_of_right(plan_sizes, 455, 25, mpmath.sqrt(9 + mpf(64) / n)) for n in (1, 2, 3, 4)}
plan_best = chance_of_right(plan_sizes, 455, 25, mpf(3))


def welch(parts_):
    u = mpmath.sqrt(sum(mpf(p) ** 2 for p, _ in parts_))
    return u, u**4 / sum(mpf(p) ** 4 / d for p, d in parts_ if d is not None)


def expanded(n, r, rdf, l, ldf, probability):
    u, nu = welch([(mpf(r) / mpmath.sqrt(n), rdf), (mpf(l), ldf)])
    return float(stats.t.ppf(0.5 + probability / 2, float(nu)) * float(u))


target = 9.0
planned = next(n for n in range(1, 1000) if expanded(n, 8, 8, 3, 8, 0.95) <= target)

measurement = {
    "anticipated": anticipated,
    "readings": readings, "running": running,
    "histogram": {"values": histogram_values, "from": low, "counts": counts.tolist()},
    "digits": {"cm": digits_cm, "counts": digit_counts, "chiSquare": float(chi), "p": float(p), "index": 100 * math.sqrt(chi / (60 * 9))},
    "trend": {"rows": trend_rows, "slope": beta[-1], "standardError": se, "lower": beta[-1] - tq * se, "upper": beta[-1] + tq * se, "p": float(2 * stats.t.sf(abs(beta[-1]) / se, df)), "df": df},
    "cochran": {"variances": variances, "index": worst, "p": float(cochran[worst][0]), "statistic": cochran[worst][1], "critical": float(cochran[worst][2])},
    "mls": [{"parts": [{"weight": w, "meanSquare": m, "degreesOfFreedom": d} for w, m, d in parts_], "confidence": c, **mls(parts_, c)} for parts_, c in MLS],
    "plan": {"sizes": plan_sizes, "chances": {n: text(c) for n, c in plan_chances.items()}, "best": text(plan_best)},
    "expanded": {"target": target, "count": planned, "reached": expanded(planned, 8, 8, 3, 8, 0.95)},
    "mean": [
        # bias, lasting, noise, step, count; slips of 20 mm longer in one reading of ten in the last two.
        {"biasMm": b, "lastingMm": l, "noiseMm": s, "stepMm": q, "slip": slip, "count": n,
         "bias": b + (2 if slip else 0),
         "sd": text(mpmath.sqrt(mpf(l) ** 2 + (mpf(q) ** 2 / 12 * rounding_correlation(mpf(s), q) if q else 0) + (mpf(s) ** 2 + (36 if slip else 0) + (mpf(q) ** 2 / 12 * (1 - rounding_correlation(mpf(s), q)) if q else 0)) / n))}
        for b, l, s, q, slip, n in ((0, 7, 6, 0, False, 3), (4, 0, 6, 5, False, 4), (-2, 5, 2, 10, False, 9), (0, 3, 8, 0, True, 5), (1, 3, 8, 5, True, 2))
    ],
}
# 0.1 · 20² − 2² = 36 is the variance of such a slip, 2 mm its mean.

# --- population -------------------------------------------------------------------------------------------------

values = [round(RANDOM.gauss(425, 26), 1) for _ in range(30)]
weights = [RANDOM.choice([0.5, 1, 1.5, 2, 3]) for _ in range(30)]
w, v = numpy.array(weights), numpy.array(values)
wmean = float(numpy.average(v, weights=w))
wvar = float(numpy.average((v - wmean) ** 2, weights=w))
kish = float(w.sum() ** 2 / (w**2).sum())
h = int(0.2 * 30)
trimmed = stats.trim_mean(v, 0.2)
wins = numpy.asarray(stats.mstats.winsorize(numpy.sort(v), limits=(0.2, 0.2)))
kept = 30 - 2 * h


def akinshin(values_, weights_, p_, a, b):
    pairs = sorted((Fraction(str(x)), Fraction(str(y))) for x, y in zip(values_, weights_) if y > 0)
    total = sum(y for _, y in pairs)
    n = total**2 / sum(y**2 for _, y in pairs)
    hpos = min(max(a + Fraction(str(p_)) * (n + 1 - a - b), Fraction(1)), n)
    left, right = (hpos - 1) / n, hpos / n
    F = lambda u: min(max((u - left) / (right - left), Fraction(0)), Fraction(1))
    at, out = Fraction(0), Fraction(0)
    for x, y in pairs:
        nxt = at + y / total
        out += x * (F(nxt) - F(at))
        at = nxt
    return out


PLOT = {4: (0, 1), 5: (Fraction(1, 2), Fraction(1, 2)), 6: (0, 0), 7: (1, 1), 8: (Fraction(1, 3), Fraction(1, 3)), 9: (Fraction(3, 8), Fraction(3, 8))}
weighted_quantiles = [{"p": p_, "type": 1, "value": float(numpy.quantile(v, p_, weights=w, method="inverted_cdf"))} for p_ in (0.03, 0.25, 0.5, 0.81, 0.97)]
weighted_quantiles += [{"p": p_, "type": k, "value": fraction_text(akinshin(values, weights, p_, *map(Fraction, PLOT[k])))} for k in PLOT for p_ in (0.03, 0.25, 0.5, 0.81, 0.97)]

percentile_intervals = []
for n, p_, c in ((10, 0.5, 0.95), (30, 0.5, 0.9), (30, 0.9, 0.8), (100, 0.05, 0.95)):
    miss = (1 - c) / 2
    low_rank = max((k for k in range(1, n + 1) if stats.binom.cdf(k - 1, n, p_) <= miss + 1e-12), default=0)
    high_rank = min((k for k in range(1, n + 1) if stats.binom.sf(k - 1, n, p_) <= miss + 1e-12), default=None)
    coverage = (1 if high_rank is None else stats.binom.cdf(high_rank - 1, n, p_)) - (0 if low_rank == 0 else stats.binom.cdf(low_rank - 1, n, p_))
    percentile_intervals.append({"n": n, "p": p_, "confidence": c, "lower": low_rank or None, "upper": high_rank, "coverage": float(coverage)})

MIX = [(3, 400, 22.7), (1, 455, 25.1)]
mix_w = [mpf(m[0]) / 4 for m in MIX]
mix_cdf = lambda x: sum(a * cdf((mpf(x) - m) / mpf(s)) for a, (_, m, s) in zip(mix_w, MIX))
mix_pdf = lambda x: sum(a * phi((mpf(x) - m) / mpf(s)) / mpf(s) for a, (_, m, s) in zip(mix_w, MIX))
mix_mean = sum(a * m for a, (_, m, _s) in zip(mix_w, MIX))
mix_var = sum(a * (mpf(s) ** 2 + (m - mix_mean) ** 2) for a, (_, m, s) in zip(mix_w, MIX))
mix_third = sum(a * (3 * (m - mix_mean) * mpf(s) ** 2 + (m - mix_mean) ** 3) for a, (_, m, s) in zip(mix_w, MIX))

people = [[round(RANDOM.gauss(1680, 70), 1), round(RANDOM.gauss(420, 25), 1), round(RANDOM.gauss(880, 90), 1)] for _ in range(25)]
for row in people:
    row[1] = round(row[1] + 0.2 * (row[0] - 1680), 1)
P = numpy.array(people)
pw = numpy.array([RANDOM.choice([1, 2, 3]) for _ in range(25)], float)
pcov = numpy.cov(P.T, aweights=pw, ddof=0)
pmean = numpy.average(P, axis=0, weights=pw)
slope = pcov[1:, 0] / pcov[0, 0]
given_stature = 1720.0
moved = P[:, 1:] + numpy.outer(given_stature - P[:, 0], slope)
# Pearson–Lawley: another distribution of stature.
new_mean, new_var = 1750.0, 3600.0
B = pcov[1:, [0]] / pcov[0, 0]
mean_after = numpy.concatenate([[new_mean], pmean[1:] + B[:, 0] * (new_mean - pmean[0])])
cov_oo = pcov[1:, 1:] - B @ pcov[[0], 1:] + B @ B.T * new_var

kernel_iqr = float(numpy.quantile(v, 0.75, method="inverted_cdf") - numpy.quantile(v, 0.25, method="inverted_cdf"))
bw = 0.9 * min(v.std(), kernel_iqr / 1.34) * 30**-0.2
kde_points = [390.0, 425.0, 447.5]

repeated = fits = [[round(RANDOM.gauss(m, 6)) for _ in range(3)] for m in (402, 415, 421, 428, 433, 440, 409, 455)]
R = numpy.array(repeated, float)
msb = 3 * R.mean(axis=1).var(ddof=1)
msw = R.var(axis=1, ddof=1).mean()
between = math.sqrt((msb - msw) / 3)

women = {"mean": 400.0, "sd": 22.7}
population = {
    "values": values, "weights": weights,
    "weighted": {"mean": wmean, "kish": kish, "sd": math.sqrt(wvar * kish / (kish - 1)), "standardError": float(math.sqrt(30 / 29 * ((w * (v - wmean)) ** 2).sum()) / w.sum())},
    "trimmed": {"mean": float(trimmed), "standardError": float(math.sqrt(((wins - wins.mean()) ** 2).sum() / (kept * (kept - 1)))), "each": h},
    "quantiles": weighted_quantiles,
    "percentileIntervals": percentile_intervals,
    "normal": [{"mean": 400, "sd": 22.7, "x": x, "below": text(cdf((mpf(x) - 400) / mpf(22.7))), "above": text(cdf((400 - mpf(x)) / mpf(22.7))), "density": text(phi((mpf(x) - 400) / mpf(22.7)) / mpf(22.7))} for x in (300.0, 380.0, 400.5, 437.25, 500.0)],
    "normalQuantiles": [{"p": p_, "x": text(400 + mpf(22.7) * mpmath.sqrt(2) * mpmath.erfinv(2 * mpf(p_) - 1))} for p_ in (0.001, 0.05, 0.25, 0.75, 0.95, 0.999)],
    "mixture": {
        "parts": MIX, "mean": text(mix_mean), "variance": text(mix_var), "skewness": text(mix_third / mix_var**1.5),
        "points": [{"x": x, "below": text(mix_cdf(x)), "density": text(mix_pdf(x))} for x in (350.0, 400.0, 427.5, 470.0)],
        "quantiles": [{"p": p_, "x": text(mpmath.findroot(lambda x: mix_cdf(x) - mpf(p_), 400))} for p_ in (0.05, 0.5, 0.9)],
    },
    "qq": {"sorted": sorted(values), "expected": [float(stats.norm.ppf((i + 0.5) / 30, 425, 26)) for i in range(30)]},
    "empirical": {"mean": float(v.mean()), "variance": float(v.var()), "skewness": float(stats.skew(v)), "width": float(bw), "density": [{"x": x, "value": float(stats.norm.pdf((x - v) / bw).mean() / bw)} for x in kde_points], "quantiles": [{"p": p_, "x": float(numpy.quantile(v, p_, method="inverted_cdf"))} for p_ in (0.1, 0.5, 0.77)], "below": [{"x": x, "share": float((v <= x).mean())} for x in kde_points]},
    "people": people, "peopleWeights": pw.tolist(),
    "joint": {"mean": pmean.tolist(), "covariance": pcov.tolist(), "given": given_stature, "givenMean": numpy.average(moved, axis=0, weights=pw).tolist(), "givenCovariance": numpy.cov(moved.T, aweights=pw, ddof=0).tolist(), "effective": float(pw.sum() ** 2 / (pw**2).sum())},
    "unweighted": {"mean": P.mean(axis=0).tolist(), "covariance": numpy.cov(P.T).tolist()},
    "reweight": {"mean": new_mean, "variance": new_var, "means": mean_after.tolist(), "covariance": cov_oo.tolist(), "cross": (B[:, 0] * new_var).tolist()},
    "repeated": {"rows": repeated, "percentiles": [{"share": s, "value": float(R.mean() + stats.norm.ppf(s) * between)} for s in (0.05, 0.5, 0.95)]},
    "bootstrapSe": float(v.std() / math.sqrt(30)),
    "unlikely": {"usual": 0, "z": 2.5, "tail": text(2 * cdf(mpf("-2.5")))},
}

json.dump(
    {
        "origin": f"recomputed with Python: SciPy {scipy.__version__}, NumPy {numpy.__version__}, mpmath {mpmath.__version__}",
        "statistics": statistics,
        "sets": sets,
        "measurement": measurement,
        "population": population,
    },
    sys.stdout,
    indent=1,
)
