"""Recomputes statistics-values.json: python3 statistics-values.py > statistics-values.json

Every argument is a double, taken exactly; every result has 25 significant digits of 50 or more that
were worked with. Needs mpmath; the tests need only the JSON file.
"""

import json
import sys

import mpmath
from mpmath import beta, erfc, exp, expm1, gammainc, hyp2f1, inf, log, loggamma, mpf, nstr, pi, quad, sqrt

mpmath.mp.dps = 60


def text(x):
    return nstr(x, 25, min_fixed=-5, max_fixed=5)


def upper(z):
    return erfc(mpf(z) / sqrt(mpf(2))) / 2


def normal_between(a, b):
    return upper(a) - upper(b) if a >= 0 else upper(-b) - upper(-a)


def normal_quantile(p):
    """Newton's method for the logarithm of the smaller tail."""
    small = min(mpf(p), 1 - mpf(p))
    z = sqrt(-2 * log(small)) if small < 0.3 else sqrt(2 * pi) * (mpf(1) / 2 - small)
    for _ in range(100):
        tail = upper(z)
        step = log(tail / small) * tail / (exp(-z * z / 2) / sqrt(2 * pi))
        z += step
        if abs(step) < abs(z) * mpf(10) ** -50:
            break
    return -z if p < 0.5 else z


def beta_share(x, a, b):
    """The regularised incomplete beta function by 2F1 (DLMF 8.17.8)."""
    return x**a * (1 - x) ** b / (a * beta(a, b)) * hyp2f1(a + b, 1, a + 1, x)


def t_density(t, df):
    return exp(loggamma((df + 1) / 2) - loggamma(df / 2)) / sqrt(df * pi) * (1 + t * t / df) ** (-(df + 1) / 2)


def t_middle(t, df):
    """P(0 < T < t)."""
    return beta_share(t * t / (df + t * t), mpf(1) / 2, df / 2) / 2


def t_upper(t, df):
    t, df = mpf(t), mpf(df)
    if t < 1:
        return mpf(1) / 2 - t_middle(t, df)
    return beta_share(df / (df + t * t), df / 2, mpf(1) / 2) / 2


def t_quantile(p, df):
    """The lower quantile for p < ½, by Newton's method in logarithms."""
    p, df = mpf(p), mpf(df)
    z = -normal_quantile(p) * (8 * df + 3) / (8 * df + 1)
    place = log(sqrt(df * expm1(z * z / df)))
    for _ in range(200):
        t = exp(place)
        tail = t_upper(t, df)
        if p < 0.2:
            step = log(tail / p) * tail / (t * t_density(t, df))
        else:
            middle = t_middle(t, df)
            step = log((mpf(1) / 2 - p) / middle) * middle / (t * t_density(t, df))
        place += step
        if abs(step) < mpf(10) ** -45:
            break
    return -exp(place)


def gamma_lower(a, x):
    """The regularised lower incomplete gamma function by its power series (DLMF 8.11.4)."""
    term = total = 1 / a
    n = 0
    while term > total * mpf(10) ** -55:
        n += 1
        term *= x / (a + n)
        total += term
    return exp(a * log(x) - x - loggamma(a)) * total


def bivariate(h, k, rho):
    """P(X <= h, Y <= k) as an integral over x, cut where the inner distribution function turns."""
    if h == -inf or k == -inf:
        return mpf(0)
    h, k, rho = mpf(h), mpf(k), mpf(rho)
    if k == inf:
        return upper(-h) if h != inf else mpf(1)
    if h == inf:
        return upper(-k)
    spread = sqrt((1 - rho) * (1 + rho))

    def inner(x):
        return exp(-x * x / 2) / sqrt(2 * pi) * upper((rho * x - k) / spread)

    low, high = mpf(-14), min(h, mpf(14))
    cuts = {low, high} | {mpf(c) for c in range(-13, 14)}
    if rho != 0:
        turn, width = k / rho, spread / abs(rho)
        cuts |= {turn + m * width for m in (-14, -10, -8, -6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6, 8, 10, 14)}
    return quad(inner, sorted(c for c in cuts if low <= c <= high))


def number(s):
    return {"-Infinity": -inf, "Infinity": inf}.get(s) or mpf(float(s))


def box(bounds, rho):
    mpmath.mp.dps = 34
    l1, u1, l2, u2 = map(number, bounds)
    result = bivariate(u1, u2, rho) - bivariate(l1, u2, rho) - bivariate(u1, l2, rho) + bivariate(l1, l2, rho)
    mpmath.mp.dps = 60
    return result


WORD = 2**32 - 1


def quarter_round(a, b, c, d):
    """RFC 8439, section 2.1."""

    def rotate(x, n):
        return (x << n | x >> (32 - n)) & WORD

    a = (a + b) & WORD
    d = rotate(d ^ a, 16)
    c = (c + d) & WORD
    b = rotate(b ^ c, 12)
    a = (a + b) & WORD
    d = rotate(d ^ a, 8)
    c = (c + d) & WORD
    b = rotate(b ^ c, 7)
    return a, b, c, d


def scramble(key, words):
    for word in words:
        key = (key[0] ^ (word & WORD), *key[1:])
        for _ in range(4):
            a, b, c, d = quarter_round(*key)
            key = (b, c, d, a)
    return key


def label_words(label):
    if isinstance(label, str):
        return [2, len(label), *map(ord, label)]
    return [1, label, label // 2**32]


def stream(seed, path, count):
    """The first uniform numbers as multiples of 2^-53: seed and labels scrambled, then xoroshiro128+."""
    key = (0x61707865, 0x3320646E, 0x79622D32, 0x6B206574)
    for label in (seed, *path):
        key = scramble(key, label_words(label))
    high0, low0, high1, low1 = scramble(key, [0])
    s0, s1 = high0 << 32 | low0, high1 << 32 | low1
    mask = 2**64 - 1

    def rotate(x, n):
        return (x << n | x >> (64 - n)) & mask

    def word():
        nonlocal s0, s1
        result = (s0 + s1) & WORD
        s1 ^= s0
        s0, s1 = rotate(s0, 24) ^ s1 ^ (s1 << 16) & mask, rotate(s1, 37)
        return result

    return [str((word() >> 5) * 2**26 + (word() >> 6)) for _ in range(count)]


ZS = [-37.5, -35.0, -29.493990347056556, -20.0, -10.0, -8.3, -6.0, -5.7, -5.66, -5.65, -5.0, -4.0, -3.0]
ZS += [-2.062085101552391, -1.96, -1.0, -0.7, -0.6745, -0.674, -0.5, -0.1, -1e-3, -1e-10, 0.3, 1.0, 2.0, 5.0]
PS = [1e-300, 1e-200, 9.968237158202233e-175, 1e-100, 1e-50, 1e-20, 1e-16, 1.3e-11, 1e-9, 1e-5, 0.001, 0.0249]
PS += [0.025, 0.074, 0.076, 0.1, 0.158655, 0.25, 0.4, 0.49, 0.5 + 2**-40, 0.6, 0.9, 0.92, 0.93, 0.975, 0.999]
PS += [1 - 2**-30, 1 - 2**-53]
INTERVALS = [(8.0, 9.0), (20.0, 21.0), (-21.0, -20.0), (1.0, 1.0001), (-1e-9, 1e-9), (30.0, 30.00000001)]
INTERVALS += [(-6.0, 6.0), (-0.5, 2.5), (0.25, 0.2500001), (-37.5, -36.5), (-0.2, -0.1), (0.1, 1.5), (2.0, 2.4)]
DFS = [0.5, 1.0, 1.5, 2.0, 3.0, 4.2, 9.0, 17.3, 30.0, 99.9, 100.0, 350.5, 4000.0, 1e5, 1e6]
TS = [1e-6, 0.3, 0.9, 1.2, 1.7, 2.5, 4.0, 7.0, 15.0, 30.0]
T_PS = [1e-12, 1e-6, 0.001, 0.005, 0.025, 0.05, 0.1, 0.24, 0.26, 0.4, 0.49, 0.4999999]
T_INTERVALS = [(3.0, 3.0001), (-1.0, 2.0), (0.1, 0.10000001), (-8.0, -7.0), (20.0, 21.0), (0.0, 0.5)]
CHI = [(0.5, 1e-6), (0.5, 3.0), (1.0, 0.1), (1.0, 90.0), (3.0, 0.01), (4.7, 5.0), (9.0, 1.0), (9.0, 40.0)]
CHI += [(20.0, 20.0), (100.5, 60.0), (100.5, 210.0), (1000.0, 824.0), (1000.0, 1278.0), (1e5, 1e5), (1e6, 1007574.0)]
FS = [(1.0, 1.0, 0.05), (1.0, 10.0, 2.1), (2.0, 3.0, 62.0), (5.0, 2.5, 0.9), (0.5, 0.5, 4.5), (9.0, 9.0, 0.28)]
FS += [(30.0, 4.0, 4.3), (3.0, 100.0, 2.1), (100.0, 100.0, 0.65), (1000.0, 20.0, 0.4), (1e5, 7.0, 0.66)]
BETAS = [(0.25, 2.0, 3.0), (1e-5, 0.5, 0.5), (0.9, 30.0, 4.5), (0.5, 200.0, 210.0), (0.999, 0.3, 7.0)]
GAMMAS = [1e-10, 0.1, 0.49, 0.51, 0.9999, 1.0001, 1.5, 1.999999, 2.00001, 2.49, 2.51, 3.7, 9.99, 10.0, 18.018, 1e3, 1e8]
BOXES = [
    (("-Infinity", "1.2", "-0.7", "0.4"), 0.3),
    (("-1", "1", "-1", "1"), 0.1),
    (("-1", "1", "-1", "1"), 0.925),
    (("-1", "1", "-1", "1"), 0.926),
    (("-1", "1", "-1", "1"), -0.999),
    (("0", "1", "0.5", "2"), 0.7),
    (("-2", "0.5", "1", "3"), -0.3),
    (("1", "2", "-2", "-1"), 0.8),
    (("5", "6", "5", "7"), 0.9),
    (("5", "6", "5", "7"), 0.95),
    (("-6", "-5", "5", "7"), -0.97),
    (("-0.1", "0.1", "-0.1", "0.1"), 0.99),
    (("2", "2.001", "-0.3", "-0.299"), 0.6),
    (("2", "2.001", "1.999", "2.0015"), 0.9999),
    (("-Infinity", "-5", "-Infinity", "-5"), 0.9),
    (("-Infinity", "0.5", "-Infinity", "0.501"), 0.999),
    (("-Infinity", "0.5", "-Infinity", "0.5"), 0.99999),
    (("-Infinity", "0.5", "-0.500001", "Infinity"), -0.9999),
    (("-Infinity", "1.3", "-Infinity", "1.3000001"), 0.9999999),
    (("-Infinity", "-1.3", "-Infinity", "1.3001"), -0.999999),
    (("-Infinity", "2.5", "-Infinity", "-0.4"), -0.9251),
    (("-Infinity", "1.7", "-Infinity", "2.9"), 0.924),
    (("0.2", "Infinity", "-Infinity", "-0.1"), 0.95),
    (("-3", "3", "-0.2", "0.9"), -0.6),
]

json.dump(
    {
        "source": "DLMF 7.2, 8.2, 8.17; bivariate normal by quadrature of its conditional distribution",
        "origin": f"recomputed with mpmath {mpmath.__version__}, 60 digits (bivariate: 34)",
        "normal": [{"z": z, "below": text(upper(-mpf(z))), "above": text(upper(z))} for z in ZS],
        "normalQuantile": [{"p": p, "z": text(normal_quantile(p))} for p in PS],
        "normalInterval": [{"a": a, "b": b, "p": text(normal_between(mpf(a), mpf(b)))} for a, b in INTERVALS],
        "student": [{"df": df, "t": t, "above": text(t_upper(t, df))} for df in DFS for t in TS],
        "studentQuantile": [{"df": df, "p": p, "t": text(t_quantile(p, df))} for df in DFS for p in T_PS],
        "studentInterval": [
            {
                "df": df,
                "a": a,
                "b": b,
                "p": text(
                    t_upper(a, df) - t_upper(b, df)
                    if a >= 0
                    else t_upper(-b, df) - t_upper(-a, df)
                    if b <= 0
                    else 1 - t_upper(-a, df) - t_upper(b, df)
                ),
            }
            for df in [0.5, 2.0, 9.0, 99.9, 1000.0]
            for a, b in T_INTERVALS
        ],
        "chiSquare": [
            {
                "df": df,
                "x": x,
                "below": text(gamma_lower(mpf(df) / 2, mpf(x) / 2)),
                "above": text(1 - gamma_lower(mpf(df) / 2, mpf(x) / 2)),
            }
            for df, x in CHI
        ],
        "f": [
            {
                "df1": df1,
                "df2": df2,
                "x": x,
                "below": text(beta_share(df1 * mpf(x) / (df1 * mpf(x) + df2), mpf(df1) / 2, mpf(df2) / 2)),
                "above": text(beta_share(df2 / (df1 * mpf(x) + df2), mpf(df2) / 2, mpf(df1) / 2)),
            }
            for df1, df2, x in FS
        ],
        "incompleteBeta": [{"x": x, "a": a, "b": b, "p": text(beta_share(mpf(x), mpf(a), mpf(b)))} for x, a, b in BETAS],
        "logGamma": [{"x": x, "value": text(loggamma(mpf(x)))} for x in GAMMAS],
        "random": [
            {"seed": seed, "labels": path, "wholes": stream(seed, path, 4)}
            for seed, path in [(0, []), (7, []), (-1, []), (2**53 - 1, []), (7, ["ana"]), (7, ["a", 3]), (7, ["a", "3"])]
        ],
        "bivariate": [{"bounds": bounds, "rho": rho, "p": text(box(bounds, rho))} for bounds, rho in BOXES],
    },
    sys.stdout,
)
