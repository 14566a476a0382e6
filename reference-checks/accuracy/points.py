"""Recomputes points.json: python3 points.py [points a function] > points.json

Where each numeric kernel is asked, and what it should answer, with 25 digits of 50 and more that were worked with.
Design: for every function its edges (ends of the working domain, where its algorithm changes, next to zeros, far
tails) and random points, seeded, uniform or log-uniform over the domain that is stated beside them. Arguments are
doubles, taken exactly. Needs mpmath.
"""

import json
import math
import random
import sys
from fractions import Fraction

import mpmath
from mpmath import exp, expm1, hyp2f1, log, loggamma, mpf, nstr, sqrt

mpmath.mp.dps = 60
COUNT = int(sys.argv[1]) if len(sys.argv) > 1 else 60
PI = mpmath.pi
INF = mpmath.inf


def text(x):
    return nstr(mpf(x), 25, min_fixed=-5, max_fixed=5)


def fraction(f):
    return mpf(f.numerator) / f.denominator


def upper(z):
    return mpmath.erfc(mpf(z) / sqrt(mpf(2))) / 2


def pdf(z):
    return exp(-mpf(z) ** 2 / 2) / sqrt(2 * PI)


def between(a, b):
    a, b = mpf(a), mpf(b)
    return upper(a) - upper(b) if a >= 0 else upper(-b) - upper(-a)


def solve(f, slope, start):
    """Newton in logarithms of the variable: f is the logarithm of a ratio that is to be 0."""
    place = mpf(start)
    for _ in range(200):
        step = f(place) / slope(place)
        step = max(min(step, mpf(2)), mpf(-2))
        place += step
        if abs(step) < mpf(10) ** -45:
            break
    return place


def normal_quantile(p):
    small = min(mpf(p), 1 - mpf(p))
    if small == mpf("0.5"):
        return mpf(0)
    z = sqrt(-2 * log(small)) if small < 0.3 else sqrt(2 * PI) * (mpf(1) / 2 - small)
    for _ in range(100):
        tail = upper(z)
        step = log(tail / small) * tail / pdf(z)
        z += step
        if abs(step) < abs(z) * mpf(10) ** -50:
            break
    return -z if p < 0.5 else z


def beta_share(x, a, b):
    """DLMF 8.17.8."""
    return exp(a * log(x) + b * mpmath.log1p(-x) - log(a) - loggamma(a) - loggamma(b) + loggamma(a + b)) * hyp2f1(a + b, 1, a + 1, x, maxterms=10**6)


def t_density(t, df):
    return exp(loggamma((df + 1) / 2) - loggamma(df / 2) - (df + 1) / 2 * mpmath.log1p(t * t / df)) / sqrt(df * PI)


def t_upper(t, df):
    t, df = mpf(t), mpf(df)
    if t < 0:
        return 1 - t_upper(-t, df)
    if t * t < df / 2 and t < 3:
        return mpf(1) / 2 - beta_share(t * t / (df + t * t), mpf(1) / 2, df / 2) / 2 if t > 0 else mpf(1) / 2
    return beta_share(df / (df + t * t), df / 2, mpf(1) / 2) / 2


def t_quantile(p, df):
    p, df = mpf(p), mpf(df)
    small = min(p, 1 - p)
    z = -normal_quantile(small) * (8 * df + 3) / (8 * df + 1)
    start = log(sqrt(df * expm1(z * z / df)))
    if small < 0.3:
        place = solve(lambda s: log(t_upper(exp(s), df) / small), lambda s: exp(s) * t_density(exp(s), df) / t_upper(exp(s), df), start)
    else:
        half = lambda s: mpf(1) / 2 - t_upper(exp(s), df)
        place = solve(lambda s: log((mpf(1) / 2 - small) / half(s)), lambda s: exp(s) * t_density(exp(s), df) / half(s), start)
    return -exp(place) if p < 0.5 else exp(place)


def gamma_lower(a, x):
    """DLMF 8.11.4."""
    term = total = 1 / a
    n = 0
    while term > total * mpf(10) ** (-mpmath.mp.dps):
        n += 1
        term *= x / (a + n)
        total += term
    return exp(a * log(x) - x - loggamma(a)) * total


def gamma_both(a, x):
    """Lower and upper share; the upper one is a complement with digits enough."""
    a, x = mpf(a), mpf(x)
    with mpmath.workdps(60):
        low = gamma_lower(a, x)
    if low < 0.9:
        return low, 1 - low
    with mpmath.workdps(420):
        return low, 1 - gamma_lower(a, x)


def chi_quantile(p, df):
    p, half = mpf(p), mpf(df) / 2
    density = lambda x: exp((half - 1) * log(x) - x - loggamma(half))
    low_side = p < 0.5
    want = p if low_side else 1 - p
    share = lambda x: gamma_both(half, x)[0 if low_side else 1]
    z = normal_quantile(p)
    guess = half * (1 - 1 / (9 * half) + z / (3 * sqrt(half))) ** 3 if df > 3 else exp((log(p) + loggamma(half + 1)) / half)
    if not guess > 0:
        guess = exp((log(p) + loggamma(half + 1)) / half)
    sign = 1 if low_side else -1
    place = solve(lambda s: sign * log(want / share(exp(s))), lambda s: exp(s) * density(exp(s)) / share(exp(s)), log(guess))
    return 2 * exp(place)


def bivariate(h, k, rho):
    """P(X <= h, Y <= k)."""
    h, k, rho = mpf(h), mpf(k), mpf(rho)
    spread = sqrt((1 - rho) * (1 + rho))
    inner = lambda x: pdf(x) * upper((rho * x - k) / spread)
    low, high = mpf(-14), min(h, mpf(14))
    cuts = {low, high} | {mpf(c) for c in range(-13, 14)}
    if rho != 0:
        turn, width = k / rho, spread / abs(rho)
        cuts |= {turn + m * width for m in (-10, -8, -6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6, 8, 10)}
    return mpmath.quad(inner, sorted(c for c in cuts if low <= c <= high))


def owens(h, a):
    h, a = mpf(h), mpf(a)
    if a > 1:
        up, far = upper(h), upper(a * h)
        return up * (mpf(1) / 2 - far) + far / 2 - owens(a * h, 1 / a)
    f = lambda x: exp(-h * h * (1 + x * x) / 2) / (1 + x * x) / (2 * PI)
    reach = min(a, 14 / h) if h > 0 else a
    cuts = [reach * j / 8 for j in range(9)]
    total = mpmath.quad(f, cuts)
    return total + (mpmath.quad(f, [reach, a]) if reach < a else 0)


def plackett(h, k, rho):
    """P(X <= h, Y <= k) by Plackett's identity, an integral over the angle: quick for moderate correlations."""
    f = lambda t: exp(-(h * h + k * k - 2 * h * k * mpmath.sin(t)) / (2 * mpmath.cos(t) ** 2))
    return upper(-h) * upper(-k) + mpmath.quad(f, [0, mpmath.asin(rho)]) / (2 * PI)


def trivariate(h, r12, r13, r23):
    """P(all three below), conditioning on the first: quadrature of a bivariate share."""
    h1, h2, h3 = map(mpf, h)
    r12, r13, r23 = map(mpf, (r12, r13, r23))
    s2, s3 = sqrt(1 - r12**2), sqrt(1 - r13**2)
    rho = (r23 - r12 * r13) / (s2 * s3)
    f = lambda x: pdf(x) * plackett((h2 - r12 * x) / s2, (h3 - r13 * x) / s3, rho)
    return mpmath.quad(f, [mpf(-9), mpf(-4), mpf(-2), min(mpf(0), h1), h1] if h1 > -2 else [mpf(-9), mpf(-4), h1], maxdegree=5)


def truncated(a, b):
    """Mean and variance of a standard normal variable between a and b."""
    with mpmath.workdps(50):
        a, b = mpf(a), mpf(b)
        f = lambda k: mpmath.quad(lambda x: x**k * pdf(x) / pdf(max(abs(a), 0) if a > 0 else 0), [a + (b - a) * j / 12 for j in range(13)])
        m0, m1 = f(0), f(1)
        mean = m1 / m0
        second = mpmath.quad(lambda x: (x - mean) ** 2 * pdf(x) / pdf(a if a > 0 else 0), [a + (b - a) * j / 12 for j in range(13)])
        return mean, second / m0


R = random.Random(1)


def uniform(a, b):
    return R.uniform(a, b)


def scaled(a, b):
    """Log-uniform."""
    return math.exp(R.uniform(math.log(a), math.log(b)))


def signed(x):
    return x if R.random() < 0.5 else -x


functions = []


def case(name, domain, edges, draw, answer, count=COUNT, kind="relative", digits=60):
    points = []
    for args in [*edges, *(draw() for _ in range(count))]:
        args = [float(x) for x in args]
        with mpmath.workdps(digits):
            value = answer(*args)
        if value == 0 or (kind == "relative" and not mpf(10) ** -305 < abs(value) < mpf(10) ** 305):
            continue
        points.append([*args, text(value)])
    functions.append({"name": name, "domain": domain, "kind": kind, "points": points})
    print(name, len(points), file=sys.stderr)


TINY = [0.5, 1.0, 2.0, 10.0, 100.0, 1e5]
case("normalCdf", "z from −37.5 to 9", [[z] for z in (-37.5, -8.3, -5.66, -0.6745, -1e-10, 0.0, 0.4769, 9.0)], lambda: [uniform(-37.5, 9)], lambda z: upper(-z), 3 * COUNT)
case("normalUpperTail", "z from −9 to 37.5", [[z] for z in (-9.0, 0.0, 1e-10, 0.6745, 5.66, 8.3, 37.5)], lambda: [uniform(-9, 37.5)], upper, 3 * COUNT)
case("normalPdf", "|z| to 37.5", [[0.0], [1e-9], [37.5], [-20.0]], lambda: [uniform(-37.5, 37.5)], pdf, 3 * COUNT)
case("normalQuantile", "p from 10⁻³⁰⁰ to 1 − 2⁻⁵³", [[1e-300], [2.0**-53], [0.075], [0.0750001], [0.425], [0.5 + 2**-40], [0.925], [1 - 2.0**-53]], lambda: [scaled(1e-300, 0.5) if R.random() < 0.5 else uniform(0, 1)], normal_quantile, 3 * COUNT)
case("normalIntervalProbability", "ends within ±37, as narrow as 10⁻⁸", [[8.0, 9.0], [-1e-9, 1e-9], [30.0, 30.00000001], [-0.5, 2.5], [36.5, 37.0]], lambda: (lambda a, w: [a, a + w])(uniform(-12, 12), scaled(1e-8, 10)), between, 2 * COUNT)
case("studentTCdf", "|t| to 10³, ν from 0.5 to 10⁵, the tail above 10⁻³⁰", [[t, df] for df in TINY for t in (-1e3 if df < 3 else -5.0, -1.0, 1e-6, 3.0)], lambda: (lambda df: [signed(scaled(1e-6, 1e3 if df < 5 else 8)), df])(scaled(0.5, 1e5)), lambda t, df: t_upper(-t, df), 2 * COUNT)
case("studentTUpperTail", "t to 10³, ν from 0.5 to 10⁵, the tail above 10⁻³⁰", [[t, df] for df in TINY for t in (1e3 if df < 3 else 5.0, 1.0, 1e-6)], lambda: (lambda df: [scaled(1e-6, 1e3 if df < 5 else 9), df])(scaled(0.5, 1e5)), t_upper, 2 * COUNT)
case("studentTPdf", "|t| to 10³, ν from 0.5 to 10⁵", [[0.0, df] for df in TINY], lambda: (lambda df: [signed(scaled(1e-6, 1e3 if df < 5 else 9)), df])(scaled(0.5, 1e5)), lambda t, df: t_density(mpf(t), mpf(df)), 2 * COUNT)
case("studentTQuantile", "p from 10⁻¹² to 1 − 10⁻⁹, ν from 0.5 to 10⁵", [[p, df] for df in (0.5, 1.0, 2.0, 30.0, 1e5) for p in (1e-12, 0.025, 0.4999)], lambda: [scaled(1e-12, 0.5) if R.random() < 0.7 else 1 - scaled(1e-9, 0.5), scaled(0.5, 1e5)], t_quantile)
case("studentTIntervalProbability", "ends within ±30, as narrow as 10⁻⁸, ν from 0.5 to 10⁴", [[3.0, 3.0001, 9.0], [-1.0, 2.0, 0.5]], lambda: (lambda a, w: [a, a + w, scaled(0.5, 1e4)])(uniform(-8, 8), scaled(1e-8, 8)), lambda a, b, df: t_upper(a, df) - t_upper(b, df) if a >= 0 else t_upper(-b, df) - t_upper(-a, df))
case("chiSquareCdf", "ν from 0.1 to 10⁵, the tail above 10⁻³⁰", [[1e-6, 0.5], [0.1, 1.0], [1e5, 1e5], [5.0, 4.7]], lambda: (lambda df: [max(df + uniform(-8, 8) * math.sqrt(2 * df), df * scaled(1e-3, 1)), df])(scaled(0.1, 1e5)), lambda x, df: gamma_both(mpf(df) / 2, mpf(x) / 2)[0])
case("chiSquareUpperTail", "ν from 0.1 to 10⁵, the tail above 10⁻³⁰", [[90.0, 1.0], [1e5, 1e5], [40.0, 9.0]], lambda: (lambda df: [max(df + uniform(-6, 10) * math.sqrt(2 * df), df * scaled(1e-3, 1)), df])(scaled(0.1, 1e5)), lambda x, df: gamma_both(mpf(df) / 2, mpf(x) / 2)[1])
case("chiSquareQuantile", "p from 10⁻⁶ to 1 − 10⁻⁶, ν from 0.5 to 10⁴", [[0.025, 1.0], [0.975, 1.0], [0.5, 2.0], [0.05, 1e4]], lambda: [scaled(1e-6, 0.5) if R.random() < 0.5 else 1 - scaled(1e-6, 0.5), scaled(0.5, 1e4)], chi_quantile, COUNT // 2)
case("fCdf", "degrees from 0.5 to 10⁴, x from 0.01 to 10", [[0.05, 1.0, 1.0], [0.65, 100.0, 100.0]], lambda: [scaled(0.01, 10), scaled(0.5, 1e4), scaled(0.5, 1e4)], lambda x, a, b: beta_share(a * mpf(x) / (a * mpf(x) + b), mpf(a) / 2, mpf(b) / 2))
case("fUpperTail", "degrees from 0.5 to 10⁴, x from 0.1 to 100", [[4.3, 30.0, 4.0], [2.1, 3.0, 100.0]], lambda: [scaled(0.1, 100), scaled(0.5, 1e4), scaled(0.5, 1e4)], lambda x, a, b: beta_share(b / (a * mpf(x) + b), mpf(b) / 2, mpf(a) / 2))
case("incompleteBeta", "x from 10⁻⁶ to 1 − 10⁻⁶, a and b from 0.1 to 10³", [[0.25, 2.0, 3.0], [1e-5, 0.5, 0.5], [0.999, 0.3, 7.0]], lambda: [scaled(1e-6, 0.5) if R.random() < 0.5 else 1 - scaled(1e-6, 0.5), scaled(0.1, 1e3), scaled(0.1, 1e3)], lambda x, a, b: beta_share(mpf(x), mpf(a), mpf(b)))
case("incompleteGamma", "a from 0.1 to 10⁴", [[0.5, 1e-8], [1.0, 1.0], [100.0, 100.0]], lambda: (lambda a: [a, a * scaled(0.05, 3)])(scaled(0.1, 1e4)), lambda a, x: gamma_both(a, x)[0])
case("logGamma", "x from 10⁻¹⁰ to 10¹⁰", [[1e-10], [0.4999999], [0.5], [1 - 2.0**-40], [1 + 2.0**-40], [1.5], [2 - 2.0**-40], [2 + 2.0**-30], [2.5], [9.999999], [10.0], [1e10]], lambda: [scaled(1e-10, 1e10) if R.random() < 0.4 else uniform(0.3, 12)], loggamma, 3 * COUNT)
case("owensT", "h from 0.001 to 9, a from 0.001 to 1000", [[0.0625, 0.25], [7.0, 0.96875], [1.0, 0.9999975], [1.0, 1.0], [1.0, 1.0000001]], lambda: [scaled(0.001, 9), scaled(0.001, 1000)], owens)
case("bivariateNormalCdf", "ends within ±6, |ρ| to 0.9999999", [[0.5, 0.5, 0.99999], [0.0, 0.0, -0.9999], [1.3, 1.3000001, 0.9999999], [-5.0, -5.0, 0.9], [0.3, -0.4, 0.925], [0.3, -0.4, 0.9251]], lambda: [uniform(-4, 4), uniform(-4, 4), signed(1 - scaled(1e-7, 1))], bivariate, COUNT, "absolute", 26)
case("bivariateNormalBox", "ends within ±6, |ρ| to 0.999", [[-1.0, 1.0, -1.0, 1.0, 0.5]], lambda: (lambda a, b: [a, a + scaled(0.001, 3), b, b + scaled(0.001, 3), uniform(-0.999, 0.999)])(uniform(-4, 3), uniform(-4, 3)), lambda a, b, c, d, r: bivariate(b, d, r) - bivariate(a, d, r) - bivariate(b, c, r) + bivariate(a, c, r), COUNT // 3, "absolute", 26)


def correlations():
    while True:
        a, b, c = (round(uniform(-0.9, 0.9), 2) for _ in range(3))
        if 1 + 2 * a * b * c - a * a - b * b - c * c > 0.05:
            return a, b, c


trivariate_points = []
for _ in range(max(6, COUNT // 8)):
    h = [round(uniform(-1.5, 2), 2) for _ in range(3)]
    r = correlations()
    with mpmath.workdps(16):
        trivariate_points.append([*h, *r, nstr(trivariate(h, *r), 14)])
functions.append({"name": "normalBoxProbability", "domain": "three variables below −1.5 to 2, |ρ| to 0.9", "kind": "absolute", "points": trivariate_points})
print("trivariate", len(trivariate_points), file=sys.stderr)
mpmath.mp.dps = 60
WIDE = lambda: (lambda a: [a, a + scaled(0.01, 6)])(uniform(-6, 6))
EDGES = [[-1.0, 1.5], [8.0, 9.0], [20.0, 21.0], [1.0, 1.0001], [-0.5, 2.5]]
case("truncatedNormal.mean", "standard bounds from −6 to 21, as narrow as 10⁻⁴", EDGES, WIDE, lambda a, b: truncated(a, b)[0], COUNT // 2)
case("truncatedNormal.variance", "standard bounds from −6 to 21, as narrow as 10⁻⁴", EDGES, WIDE, lambda a, b: truncated(a, b)[1], COUNT // 2)
skew_cdf = lambda z, s: upper(-z) - 2 * (owens(abs(z), s) if s > 0 else -owens(abs(z), -s))
case("skewNormal.cumulative", "z within ±4, shape within ±5, the tail above 10⁻⁶", [[0.0, 3.0], [1.0, 3.0], [0.5, -2.0]], lambda: [uniform(-4, 4), signed(scaled(0.1, 5))], lambda z, s: (lambda v: v if v > mpf(10) ** -6 else mpf(0))(skew_cdf(z, s)))
case("skewNormal.density", "z within ±4, shape within ±5", [[0.0, 3.0], [-2.0, 3.0]], lambda: [uniform(-4, 4), signed(scaled(0.1, 5))], lambda z, s: 2 * pdf(z) * upper(-mpf(s) * mpf(z)))
case("lognormal.quantile", "p from 10⁻⁶ to 1 − 10⁻⁶, μ from 3 to 8, σ from 0.01 to 0.5", [[0.5, 6.8, 0.08]], lambda: [scaled(1e-6, 0.5) if R.random() < 0.5 else 1 - scaled(1e-6, 0.5), uniform(3, 8), scaled(0.01, 0.5)], lambda p, m, s: exp(mpf(m) + mpf(s) * normal_quantile(p)))
case("lognormal.mean", "μ from 3 to 8, σ from 0.01 to 0.5", [[6.8, 0.08]], lambda: [uniform(3, 8), scaled(0.01, 0.5)], lambda m, s: exp(mpf(m) + mpf(s) ** 2 / 2))

# Summaries of samples: the seed of the sample, how many, its place and its spread, rounded to tenths of a millimetre.


def exact(values):
    f = [Fraction(v) for v in values]
    mean = sum(f) / len(f)
    return mean, sum((x - mean) ** 2 for x in f) / (len(f) - 1)


def decimals(values):
    f = [Fraction(str(v)) for v in values]
    mean = sum(f) / len(f)
    return mean, sum((x - mean) ** 2 for x in f) / (len(f) - 1)


samples = []
for _ in range(COUNT // 2):
    place, spread, n = scaled(1, 1e6), scaled(0.5, 100), R.choice([2, 3, 5, 12, 50, 200])
    values = [round(R.gauss(place, spread), 1) for _ in range(n)]
    if len(set(values)) < 2:
        continue
    mean, variance = decimals(values)
    of_doubles = exact(values)
    ordered = sorted(Fraction(v) for v in values)
    at = Fraction(3, 10) * (n - 1)
    low = int(at)
    quantile = ordered[low] + (at - low) * (ordered[min(low + 1, n - 1)] - ordered[low])
    samples.append({"values": values, "mean": text(fraction(mean)), "sd": text(sqrt(fraction(variance))), "momentsMean": text(fraction(of_doubles[0])), "momentsSd": text(sqrt(fraction(of_doubles[1]))), "quantile": text(fraction(quantile))})

# Units and intervals in exact fractions: millimetres in a unit.
UNITS = {"mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000), "in": Fraction(254, 10), "ft": Fraction(3048, 10)}
conversions = []
for unit, factor in UNITS.items():
    for _ in range(COUNT):
        # What people write has few decimals; the double stands for that decimal.
        value = round(scaled(0.01, 1e4), R.choice([0, 1, 2, 3])) or 1.0
        conversions.append([unit, value, text(fraction(Fraction(str(value)) * factor)), text(fraction(Fraction(str(value)) / factor))])

lengths = []
for _ in range(COUNT):
    a = round(uniform(100, 1500), 1)
    b = round(a + scaled(0.1, 500), 1)
    c = round(uniform(a - 100, b), 1)
    d = round(c + scaled(0.1, 500), 1)
    F = [Fraction(x) for x in (a, b, c, d)]
    over = max(Fraction(0), min(F[1], F[3]) - max(F[0], F[2]))
    lengths.append([a, b, c, d, text(fraction((F[0] + F[1]) / 2)), text(fraction(F[1] - F[0])), text(fraction(over / (F[1] - F[0])))])

json.dump(
    {
        "origin": f"mpmath {mpmath.__version__}, 50 digits and more (bivariate 26, trivariate 14), and exact fractions",
        "seed": 1,
        "functions": functions,
        "samples": samples,
        "conversions": conversions,
        "lengths": lengths,
    },
    sys.stdout,
)
