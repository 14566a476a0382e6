"""Recomputes further-choices.json: python3 further-choices.py > further-choices.json

What charts, stocks, cuts and exchanges come to for people whose torso length is normal, 400 mm with a standard deviation
of 22.7 mm: mpmath quadrature, enumeration of every possibility, and a plain grid for what is learned from exchanges.
Needs numpy and mpmath; the tests need only the JSON file.
"""

import itertools
import json
import math
import sys

import mpmath
import numpy
from mpmath import mpf

mpmath.mp.dps = 30
MEAN, SD = mpf(400), mpf(22.7)
INF = mpmath.inf


def text(x):
    return mpmath.nstr(mpf(x), 18)


def below(x):
    return mpmath.ncdf((mpf(x) - MEAN) / SD)


def share(a, b):
    return below(b) - below(a)


def density(x):
    return mpmath.npdf((x - MEAN) / SD) / SD


def integral(f, a, b, parts=24):
    return mpmath.quad(f, [mpf(a) + (mpf(b) - a) * k / parts for k in range(parts + 1)])


# --- cuts: every placement on a coarse grid, by enumeration ------------------------------------------------------


def misfit(ranges):
    """E of the distance to the nearest range, from the partial expectations of a normal variable."""

    def shortfall(a):
        """E max(0, a − X)."""
        z = (a - MEAN) / SD
        return SD * (z * mpmath.ncdf(z) + mpmath.npdf(z))

    def between(a, b):
        """E of the distance from X in (a, b) to the nearer end."""
        m = (mpf(a) + b) / 2
        left = integral(lambda x: (x - a) * density(x), a, m, 4)
        right = integral(lambda x: (b - x) * density(x), m, b, 4)
        return left + right

    total = shortfall(ranges[0][0])
    last = ranges[-1][1]
    total += (MEAN - last) + shortfall(last)
    for (_, e), (s, _) in itertools.pairwise(ranges):
        if s > e:
            total += between(e, s)
    return total


def best_cuts(count, span, step, goal):
    places = range(320, 480, step)
    best = None
    for starts in itertools.combinations(places, count):
        ranges = [(s, s + span) for s in starts]
        if goal == "served" and any(b[0] < a[1] for a, b in itertools.pairwise(ranges)):
            continue
        value = sum(share(a, b) for a, b in ranges) if goal == "served" else -misfit(ranges)
        if best is None or value > best[0] + mpf(10) ** -20:
            best = (value, starts)
    return {"count": count, "spanMm": span, "stepMm": step, "goal": goal, "value": text(abs(best[0]))}


cuts = [best_cuts(1, 40, 10, "served"), best_cuts(2, 40, 10, "served"), best_cuts(3, 30, 10, "served")]
cuts += [best_cuts(1, 40, 10, "misfit"), best_cuts(2, 40, 20, "misfit"), best_cuts(2, 0, 20, "misfit")]

# --- coverage and stock of S 360–410 mm and M 400–450 mm ----------------------------------------------------------

# S alone up to 400, both 400–410 (more room in S below 405), M alone from 410.
only_s, both, only_m = share(360, 400), share(400, 410), share(410, 450)
shares = {
    "served": text(share(360, 450)),
    "below": text(below(360)),
    "above": text(1 - below(450)),
    "sizes": [text(share(360, 410)), text(share(400, 450))],
    "given": [text(share(360, 405)), text(share(405, 450))],
}


def enough(s_packs, m_packs, members):
    """P(everybody whom a size fits gets one), by counting how many are of each kind."""
    none = 1 - only_s - both - only_m
    total = mpf(0)
    for s in range(members + 1):
        for m in range(members + 1 - s):
            for e in range(members + 1 - s - m):
                if s <= s_packs and m <= m_packs and s + m + e <= s_packs + m_packs:
                    rest = members - s - m - e
                    ways = math.factorial(members) // (math.factorial(s) * math.factorial(m) * math.factorial(e) * math.factorial(rest))
                    total += ways * only_s**s * only_m**m * both**e * none**rest
    return total


stock = {"members": 12, "chances": [[text(enough(a, b, 12)) for b in range(13)] for a in range(13)]}

# --- choices with an error: S 360–400 mm, M 400–450 mm; whoever reads below 400 mm takes S ------------------------

ERROR = mpmath.sqrt(25 + 25 + (mpf("0.003") * 400) ** 2 / 3 + mpf(36) / 3)
# Three readings by oneself with a tape, not rounded: what lasts 5, 5 and the scale, what averages out 6/√3.


def picks_s(length, edge=400):
    return mpmath.ncdf((edge - length) / ERROR)


wrong = integral(lambda x: density(x) * (1 - picks_s(x)), 360, 400) + integral(lambda x: density(x) * picks_s(x), 400, 450)
errors = {"uncertaintyMm": text(ERROR), "wrong": text(wrong), "unserved": text(1 - share(360, 450)), "right": text(share(360, 450) - wrong)}

# Ranges truly sit 15 mm higher: 375–415 and 415–465; by the printed ones the edge is read as 400, else as 415.
exchanged = integral(lambda x: density(x) * (1 - picks_s(x)), 375, 415) + integral(lambda x: density(x) * picks_s(x), 415, 465)
relabelled = integral(lambda x: density(x) * (1 - picks_s(x, 415)), 375, 415) + integral(lambda x: density(x) * picks_s(x, 415), 415, 465)
returns = {
    "exchanged": text(exchanged),
    "relabelled": text(relabelled),
    "sentBack": text(1 - share(375, 465)),
    "kept": text(share(375, 465) - exchanged),
}

# Two sizes of 50 mm that overlap by 0 or 20 mm, laid where they serve most: about the mean.
overlaps = []
for lap in (0, 20):
    reach = 100 - lap
    start = 400 - reach // 2
    first, second = (start, start + 50), (start + 50 - lap, start + 100 - lap)
    edge = mpf(second[0] + first[1]) / 2
    bad = integral(lambda x: density(x) * (1 - picks_s(x, edge)), first[0], second[0]) + integral(lambda x: density(x) * picks_s(x, edge), first[1], second[1])
    overlaps.append({"overlapMm": lap, "served": text(share(start, start + reach)), "wrong": text(bad)})

# --- exchanges: a plain grid over offset and logarithm of width of the maker and of its product -------------------

TOLERANCE, MAKER, PRODUCT, MAKER_W, PRODUCT_W, SLIP = 8.0, 12.0, 7.0, 0.14, 0.09, 0.02
SEEN = [(430.0, 480.0, "above", 465.0, 8.0)] * 6 + [(430.0, 480.0, "inside", 455.0, 8.0)] * 4 + [(430.0, 480.0, "below", 433.0, 8.0)]
ncdf = numpy.vectorize(lambda z: 0.5 * math.erfc(-z / math.sqrt(2)))
offsets = numpy.linspace(-45, 45, 241)
widths = numpy.linspace(-0.5, 0.5, 161)
D, L = numpy.meshgrid(offsets, widths, indexing="ij")
log_likelihood = numpy.zeros_like(D)
as_printed = 0.0
for lo, hi, side, mean, sd in SEEN:
    sigma, c, h = math.hypot(sd, TOLERANCE), (lo + hi) / 2, (hi - lo) / 2

    def told(d, l):
        a = ncdf((c + d - h * numpy.exp(l) - mean) / sigma)
        b = ncdf((mean - c - d - h * numpy.exp(l)) / sigma)
        p = {"below": a, "above": b, "inside": numpy.maximum(0, 1 - a - b)}[side]
        return (1 - SLIP) * p + SLIP / 3

    log_likelihood += numpy.log(told(D, L))
    as_printed += math.log(float(told(numpy.array(0.0), numpy.array(0.0))))
likelihood = numpy.exp(log_likelihood)


def normal(x, sd):
    return numpy.exp(-0.5 * (x / sd) ** 2) / (sd * math.sqrt(2 * math.pi))


def summary(weights):
    w = weights / weights.sum()
    mean = float((w * D).sum())
    log_width = float((w * L).sum())
    return {"mean": mean, "sd": math.sqrt(float((w * (D - mean) ** 2).sum())), "width": math.exp(log_width)}


prior = normal(D, math.hypot(MAKER, PRODUCT)) * normal(L, math.hypot(MAKER_W, PRODUCT_W))
product = summary(prior * likelihood)
# The maker: what the product says of it, spread by what products scatter about their maker.
K = normal(offsets[:, None] - offsets[None, :], PRODUCT)
W = normal(widths[:, None] - widths[None, :], PRODUCT_W)
message = K @ likelihood @ W.T * (offsets[1] - offsets[0]) * (widths[1] - widths[0])
maker_weights = normal(D, MAKER) * normal(L, MAKER_W) * message
maker = summary(maker_weights)
marginal = float(maker_weights.sum() * (offsets[1] - offsets[0]) * (widths[1] - widths[0]))
odds = math.exp(as_printed) / marginal
# A product of the maker of which nobody told anything.
other = math.sqrt(maker["sd"] ** 2 + PRODUCT**2)

# The own length after a pack came out too long, nothing else known: the doubt is that of makers, half of it (0.5 as printed).
doubt_grid = math.sqrt(0.5 * summary(prior)["sd"] ** 2)
sigma = math.sqrt(10**2 + TOLERANCE**2 + doubt_grid**2)
z = mpf((420 - 425) / sigma)
told_share = (1 - SLIP) * mpmath.ncdf(z)
weight = told_share / (told_share + SLIP / 3)
trunc_mean = 425 - sigma * mpmath.npdf(z) / mpmath.ncdf(z)
ratio = mpmath.npdf(z) / mpmath.ncdf(z)
trunc_var = sigma**2 * (1 - z * ratio - ratio**2)
slope = 100 / sigma**2
shift = slope * (trunc_mean - 425)
variance = 100 * (1 - slope) + slope**2 * trunc_var
after = {"mean": text(425 + weight * shift), "sd": text(mpmath.sqrt(weight * variance + (1 - weight) * 100 + weight * (1 - weight) * shift**2))}

json.dump(
    {
        "origin": f"recomputed with Python: NumPy {numpy.__version__}, mpmath {mpmath.__version__}",
        "mean": 400,
        "sd": 22.7,
        "cuts": cuts,
        "shares": shares,
        "stock": stock,
        "errors": errors,
        "returns": returns,
        "overlaps": overlaps,
        "evidence": {
            "seen": [{"fromMm": a, "toMm": b, "side": s, "meanMm": m, "sdMm": d} for a, b, s, m, d in SEEN],
            "product": product,
            "maker": maker,
            "asPrinted": odds / (1 + odds),
            "otherProductSd": other,
            "after": after,
        },
    },
    sys.stdout,
    indent=1,
)
