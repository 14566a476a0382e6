# Recomputes nist-anova.json: python3 nist-anova.py > nist-anova.json
# Data and certified values: NIST/ITL Statistical Reference Datasets (StRD), Analysis of Variance. SmLs: S. D. Simon &
# J. P. Lesage (1989), Computational Statistics & Data Analysis 8, 325-332: for each treatment its first value and then
# (n - 1)/2 times the pair 0.1 below and 0.1 above it. What exact arithmetic gives for the data once each is rounded to
# a double is worked out with fractions: no computation on doubles can come nearer to the certified values.
import json
from decimal import Decimal, getcontext
from fractions import Fraction

getcontext().prec = 40

SIRSTV = [
    "196.3052 196.1240 196.1890 196.2569 196.3403",
    "196.3042 196.3825 196.1669 196.3257 196.0422",
    "196.1303 196.2005 196.2889 196.0343 196.1811",
    "196.2795 196.1748 196.1494 196.1485 195.9885",
    "196.2119 196.1051 196.1850 196.0052 196.2090",
]
# Atomic weight of silver by two instruments.
ATMWTAG = [
    "107.8681568 107.8681465 107.8681572 107.8681785 107.8681446 107.8681903 107.8681526 107.8681494 107.8681616 "
    "107.8681587 107.8681519 107.8681486 107.8681419 107.8681569 107.8681508 107.8681672 107.8681385 107.8681518 "
    "107.8681662 107.8681424 107.8681360 107.8681333 107.8681610 107.8681477",
    "107.8681079 107.8681344 107.8681513 107.8681197 107.8681604 107.8681385 107.8681642 107.8681365 107.8681151 "
    "107.8681082 107.8681517 107.8681448 107.8681198 107.8681482 107.8681334 107.8681609 107.8681101 107.8681512 "
    "107.8681469 107.8681360 107.8681254 107.8681261 107.8681450 107.8681368",
]
TENTHS = [4, 3, 5, 3, 5, 3, 5, 3, 5]


def anova(groups):
    every = [y for group in groups for y in group]
    mean = sum(every) / len(every)
    means = [sum(group) / len(group) for group in groups]
    between = sum(len(g) * (m - mean) ** 2 for g, m in zip(groups, means))
    within = sum((y - m) ** 2 for g, m in zip(groups, means) for y in g)
    dfb, dfw = len(groups) - 1, len(every) - len(groups)
    number = lambda x: Decimal(x.numerator) / Decimal(x.denominator)
    text = lambda x: format(+x.normalize(), ".25g")
    return {
        "betweenSquares": text(number(between)),
        "withinSquares": text(number(within)),
        "f": text(number((between / dfb) / (within / dfw))),
        "rSquared": text(number(between / (between + within))),
        "residualSd": text(number(within / dfw).sqrt()),
    }


def exactly(groups):
    return anova([[Fraction(y) for y in group] for group in groups])


def on_doubles(groups):
    return anova([[Fraction(float(y)) for y in group] for group in groups])


sets = []
for name, difficulty, rows, certified in [
    ("SiRstv", "lower", SIRSTV, ["5.11462616000000E-02", "2.16636560000000E-01", "1.18046237440255E+00",
                                 "1.90999039051129E-01", "1.04076068334656E-01"]),
    ("AtmWtAg", "average", ATMWTAG, ["3.63834187500000E-09", "1.04951729166667E-08", "1.59467335677930E+01",
                                     "2.57426544538321E-01", "1.51048314446410E-05"]),
]:
    groups = [row.split() for row in rows]
    exact = exactly(groups)
    for value, figure in zip(certified, exact.values()):
        assert abs(float(value) / float(figure) - 1) < 1e-14, name
    sets.append({
        "name": name, "difficulty": difficulty, "data": groups,
        "certified": dict(zip(exact, certified)), "onDoubles": on_doubles(groups),
    })
CERTIFIED = {
    21: ("1.68000000000000E+00", "1.80000000000000E+00", "2.10000000000000E+01", "4.82758620689655E-01"),
    201: ("1.60800000000000E+01", "1.80000000000000E+01", "2.01000000000000E+02", "4.71830985915493E-01"),
    2001: ("1.60080000000000E+02", "1.80000000000000E+02", "2.00100000000000E+03", "4.70712773465067E-01"),
}
for number, (size, base, difficulty) in enumerate([
    (21, 1, "lower"), (201, 1, "lower"), (2001, 1, "lower"),
    (21, 10**6, "average"), (201, 10**6, "average"), (2001, 10**6, "average"),
    (21, 10**12, "higher"), (201, 10**12, "higher"), (2001, 10**12, "higher"),
], 1):
    groups = []
    for tenth in TENTHS:
        pair = [f"{base}.{tenth - 1}", f"{base}.{tenth + 1}"]
        groups.append([f"{base}.{tenth}"] + pair * ((size - 1) // 2))
    b, w, f, r = CERTIFIED[size]
    exact = exactly(groups)
    assert abs(float(exact["f"]) / float(f) - 1) < 1e-14 and abs(float(exact["rSquared"]) / float(r) - 1) < 1e-14
    sets.append({
        "name": f"SmLs0{number}", "difficulty": difficulty, "size": size, "base": str(base), "tenths": TENTHS,
        "certified": {"betweenSquares": b, "withinSquares": w, "f": f, "rSquared": r, "residualSd": "1.00000000000000E-01"},
        "onDoubles": on_doubles(groups),
    })
print(json.dumps({
    "source": "NIST/ITL Statistical Reference Datasets (StRD), Analysis of Variance; SmLs after Simon & Lesage (1989)",
    "origin": "certified, but those of SmLs02, SmLs06 and SmLs08, which repeat the certified ones of SmLs05; onDoubles recomputed with fractions in Python 3",
    "sets": sets,
}, indent=2))
