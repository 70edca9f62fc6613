"""Check values of everyday inference by other programs: python3 inference.py > inference.json (scipy 1.17.1, numpy, fractions)."""

import json
from decimal import Decimal, getcontext
from fractions import Fraction

import numpy as np
from scipy import stats

getcontext().prec = 40
rng = np.random.default_rng(7)
cases = []


def add(kind, inputs, **expected):
    cases.append({"kind": kind, "inputs": inputs, "expected": {key: float(value) for key, value in expected.items()}})


def sample(n, digits=2):
    return [float(x) for x in np.round(rng.normal(350, 4, n), digits)]


for n in (3, 4, 5, 6, 11, 12, 13, 60, 501):
    values = sample(n, 4)
    w, p = stats.shapiro(values)
    add("shapiro-wilk", {"values": values}, statistic=w, pValue=p)
skewed = [float(x) for x in np.round(rng.gamma(1.5, 3, 25), 3)]
w, p = stats.shapiro(skewed)
add("shapiro-wilk", {"values": skewed}, statistic=w, pValue=p)

for a, b in ((5, 9), (2, 2), (30, 12)):
    x, y = sample(a), sample(b)
    for equal in (False, True):
        found = stats.ttest_ind(x, y, equal_var=equal)
        interval = found.confidence_interval(0.9)
        name = "equal" if equal else "unequal"
        expected = {"statistic": found.statistic, "pValue": found.pvalue, "degreesOfFreedom": found.df}
        inputs = {"first": x, "second": y, "variances": name, "confidence": 0.9}
        add("two-sample", inputs, **expected, low=interval.low, high=interval.high)
x, y = sample(7), sample(7)
found = stats.ttest_rel(x, y)
interval = found.confidence_interval(0.99)
inputs = {"first": x, "second": y, "confidence": 0.99}
add("paired", inputs, statistic=found.statistic, pValue=found.pvalue, low=interval.low, high=interval.high)

for count, n in ((0, 10), (10, 10), (1, 3), (37, 1000), (2, 100000)):
    for confidence in (0.9, 0.99):
        test = stats.binomtest(count, n)
        # Its own exact limits stop at 2e-12.
        half = (1 - confidence) / 2
        low = stats.beta.ppf(half, count, n - count + 1) if count > 0 else 0
        high = stats.beta.isf(half, count + 1, n - count) if count < n else 1
        wilson = test.proportion_ci(confidence, "wilson")
        inputs = {"count": count, "n": n, "confidence": confidence}
        add("proportion", inputs, low=low, high=high, wilsonLow=wilson.low, wilsonHigh=wilson.high)

for sizes in ((4, 4, 4), (3, 8, 5, 2)):
    groups = [sample(n) for n in sizes]
    found = stats.tukey_hsd(*groups)
    interval = found.confidence_interval(0.95)
    for i in range(len(groups)):
        for j in range(i + 1, len(groups)):
            inputs = {"groups": groups, "first": i, "second": j}
            expected = {"difference": found.statistic[j, i], "pValue": found.pvalue[j, i]}
            add("tukey", inputs, **expected, low=interval.low[j, i], high=interval.high[j, i])

values = sample(11)
for name, method in (("hyndman-fan-6", "weibull"), ("hyndman-fan-7", "linear"), ("hyndman-fan-8", "median_unbiased")):
    for p in (0, 0.01, 0.1, 0.25, 0.5, 0.77, 0.99, 1):
        add("quantile", {"values": values, "p": p, "definition": name}, quantile=np.quantile(values, p, method=method))

# NIST StRD NumAcc2 to NumAcc4: certified mean 1.2, 1000000.2, 10000000.2 and sd 0.1; here exact for the doubles.
for middle, low, high in ((1.2, 1.1, 1.3), (1000000.2, 1000000.1, 1000000.3), (10000000.2, 10000000.1, 10000000.3)):
    exact = [Fraction(middle)] + [Fraction(low), Fraction(high)] * 500
    mean = sum(exact) / 1001
    variance = sum((x - mean) ** 2 for x in exact) / 1000
    sd = (Decimal(variance.numerator) / Decimal(variance.denominator)).sqrt()
    add("numerical-accuracy", {"first": middle, "low": low, "high": high}, mean=mean, sd=sd)

print('{"what": "inference.py, scipy 1.17.1", "cases": [\n' + ",\n".join(map(json.dumps, cases)) + "\n]}")
