"""Tails of the laws at 40 digits, by the definitions, for points beyond the reference set: far tails, odd degrees of freedom, large counts.

python3 laws.py > laws.json (mpmath 1.3.0)
"""

import json

from mpmath import betainc, binomial, exp, gamma, gammainc, inf, mp, mpf, ncdf, quad

mp.dps = 40
cases = []


def add(law, given, lower, upper):
    point = {key: mpf(value) for key, value in given.items()}
    for tail, of in (("lower", lower), ("upper", upper)):
        value = of(**point)
        if mpf("1e-300") < value < mpf("0.999"):
            name = f"{law}-{len(cases) + 1}"
            inputs = {"law": law, **{key: float(mpf(number)) for key, number in given.items()}, "tail": tail}
            cases.append({"id": name, "inputs": inputs, "expected": {"value": float(value)}})


def beta_lower(x, y, a, b):
    return betainc(a, b, 0, x, regularized=True)


def beta_upper(x, y, a, b):
    return betainc(b, a, 0, y, regularized=True)


def student(x, degreesOfFreedom):
    n = degreesOfFreedom
    return beta_lower(n / (n + x * x), 0, n / 2, mpf(1) / 2) / 2


# Points are exact doubles, so that the law is the same on both sides.
for n in ("0.5", "1", "3", "7.25", "30", "200.5", "5000"):
    for x in ("0.0625", "1.5", "6", "40", "1000", "1e30", "1e120"):
        add("student", {"x": x, "degreesOfFreedom": n}, lambda **_: mpf(2), student)
for k in ("0.125", "0.5", "1", "7.25", "60.5", "1000", "1500", "4000.25", "100000"):
    for x in ("0.001953125", "0.5", "9", "70", "600", "1100", "1600", "3000", "4400", "99000", "102000"):
        law = {"x": x, "degreesOfFreedom": k}
        add(
            "chiSquare",
            law,
            lambda x, degreesOfFreedom: gammainc(degreesOfFreedom / 2, 0, x / 2, regularized=True),
            lambda x, degreesOfFreedom: gammainc(degreesOfFreedom / 2, x / 2, inf, regularized=True),
        )
for m, n in (("1", "1"), ("2.5", "7"), ("40", "3.5"), ("300", "300"), ("1", "5000")):
    for x in ("9.5367431640625e-7", "0.0625", "0.875", "1.25", "9", "100", "1e9"):
        law = {"x": x, "numeratorDf": m, "denominatorDf": n}
        y = lambda x, m, n: n / (n + m * x)
        add(
            "fisher",
            law,
            lambda x, numeratorDf, denominatorDf: beta_lower(
                1 - y(x, numeratorDf, denominatorDf), 0, numeratorDf / 2, denominatorDf / 2
            ),
            lambda x, numeratorDf, denominatorDf: beta_upper(
                0, y(x, numeratorDf, denominatorDf), numeratorDf / 2, denominatorDf / 2
            ),
        )
for a, b in (("0.125", "0.25"), ("1", "1"), ("0.5", "300"), ("30.5", "2"), ("1000", "1500"), ("20", "20000")):
    for x in ("9.5367431640625e-7", "0.00048828125", "0.0078125", "0.125", "0.375", "0.5", "0.875", "0.9990234375"):
        add(
            "beta",
            {"x": x, "alpha": a, "beta": b},
            lambda x, alpha, beta: beta_lower(x, 0, alpha, beta),
            lambda x, alpha, beta: beta_upper(0, 1 - x, alpha, beta),
        )


def pmf_binomial(j, n, p):
    return binomial(n, j) * p**j * (1 - p) ** (n - j)


def total(term, first, last):
    return sum((term(j) for j in range(int(first), int(last) + 1)), mpf(0))


for n, p in (("7", "0.5"), ("300", "0.0078125"), ("300", "0.75"), ("2000", "0.125")):
    for share in (0, 0.1, 0.4, 0.6, 0.97):
        k = str(int(int(n) * share))
        add(
            "binomial",
            {"k": k, "n": n, "p": p},
            lambda k, n, p: total(lambda j: pmf_binomial(j, n, p), 0, k),
            lambda k, n, p: total(lambda j: pmf_binomial(j, n, p), k + 1, n),
        )
for mean in ("0.0078125", "3", "40.5", "1000"):
    for k in ("0", "2", "30", "60", "900", "1100", "1400"):
        add(
            "poisson",
            {"k": k, "mean": mean},
            lambda k, mean: gammainc(k + 1, mean, inf, regularized=True),
            lambda k, mean: gammainc(k + 1, 0, mean, regularized=True),
        )


def pmf_hyper(j, lot, bad, n):
    return binomial(bad, j) * binomial(lot - bad, n - j) / binomial(lot, n)


for lot, bad, n in (("20", "5", "7"), ("1000", "300", "200"), ("50000", "40", "800"), ("100000", "50000", "600")):
    for k in ("0", "2", "4", "30", "60", "80", "150", "300", "400"):
        if int(k) > min(int(bad), int(n)):
            continue
        add(
            "hypergeometric",
            {"k": k, "lotSize": lot, "defectiveCount": bad, "sampleSize": n},
            lambda k, lotSize, defectiveCount, sampleSize: total(
                lambda j: pmf_hyper(j, lotSize, defectiveCount, sampleSize), max(0, sampleSize + defectiveCount - lotSize), k
            ),
            lambda k, lotSize, defectiveCount, sampleSize: total(
                lambda j: pmf_hyper(j, lotSize, defectiveCount, sampleSize), k + 1, min(defectiveCount, sampleSize)
            ),
        )


def noncentral(sign):
    def tail(x, degreesOfFreedom, noncentrality):
        n = degreesOfFreedom
        scale = 2 * (n / 2) ** (n / 2) / gamma(n / 2)
        density = lambda s: scale * s ** (n - 1) * exp(-n * s * s / 2)
        edge = noncentrality / x
        breaks = sorted({mpf(0), mpf("0.02"), *(mpf(i) / 10 for i in range(1, 31)), mpf(5), mpf(9)} | ({edge} if 0 < edge < 9 else set()))
        integral = lambda size: size * quad(lambda s: density(s) * ncdf(sign * (x * s - noncentrality)) / size, breaks)
        # quad stops at an absolute error: the second time the integral is about 1.
        return integral(integral(mpf(1)))

    return tail


for x, n, delta in (
    ("-3", "2", "1"), ("-40", "9", "2"), ("0.5", "9", "12"), ("60", "4", "3"), ("900", "2.5", "-1"), ("30", "40", "25"),
    ("3", "1", "0.5"), ("50", "199", "39.34375"), ("10", "29", "20"), ("-6", "29", "20"),
):
    law = {"x": x, "degreesOfFreedom": n, "noncentrality": delta}
    add("noncentralStudent", law, noncentral(1), noncentral(-1))

print('{"what": "laws.py, mpmath 1.3.0 at 40 digits", "cases": [\n' + ",\n".join(map(json.dumps, cases)) + "\n]}")
