"""Check values of statistics that no reference set holds: hand arithmetic, printed tables, SciPy. Writes packages/engine/golden/statistics-by-hand.json."""
import json
from pathlib import Path

import numpy as np
from scipy import stats

RELEASE = {"purpose": "release"}
gross = [500.0 + d for d in (-7, 7, -7, 7, -7, 7, -7, 7, -7, 7)]
grubbs = [10.1, 9.8, 10.0, 10.2, 9.9, 12.5]
t5 = stats.t(4).isf(0.05 / 12)
critical = float(5 / np.sqrt(6) * np.sqrt(t5**2 / (4 + t5**2)))
places = [[99.0, 101.0], [100.0, 104.0]]


def smallest(p1, a, p2, b):
    for c in range(100):
        n = next(m for m in range(c + 1, 100000) if stats.binom.cdf(c, m, p2) <= b)
        if stats.binom.cdf(c, n, p1) >= 1 - a:
            return n, c
    raise ValueError


n, ac = smallest(0.01, 0.05, 0.06, 0.1)
CASES = [
    ("binomial-quantile", {"p_frac": 0.95, "sampleCount": 50, "share_frac": 0.1}, {"count": int(stats.binom.ppf(0.95, 50, 0.1))}, 0,
     "SciPy binom.ppf(0.95, 50, 0.1)"),
    ("hypergeometric-quantile", {"p_frac": 0.9, "lotCount": 500, "defectiveCount": 40, "sampleCount": 60},
     {"count": int(stats.hypergeom.ppf(0.9, 500, 40, 60))}, 0, "SciPy hypergeom.ppf(0.9, 500, 40, 60)"),
    ("poisson-quantile", {"p_frac": 0.99, "mean_ratio": 9.5}, {"count": int(stats.poisson.ppf(0.99, 9.5))}, 0, "SciPy poisson.ppf(0.99, 9.5)"),
    ("sample-quantile", {"values_data": [1, 2, 4, 8], "p_frac": 0.25, "definition": "hyndman-fan-7"}, {"quantile_data": 1.75}, 1e-12,
     "place 1 + 3 x 0.25 = 1.75 between 1 and 2"),
    ("grubbs-outlier", {"values_data": grubbs},
     {"placeCount": 6, "value_data": 12.5, "statistic_ratio": float((12.5 - np.mean(grubbs)) / np.std(grubbs, ddof=1)), "critical_ratio": critical,
      "isOutlying": True}, 1e-9, "NumPy mean and sd; critical value by SciPy t at 0.05/12; printed table 1.887"),
    ("uniformity-of-dosage-units-by-mass",
     {"gross_mg": gross, "shells_mg": [100.0] * 10, "assay_pct": 100, "rounding": "unrounded", "route": ["dosage-units-by-mass"], **RELEASE},
     {"verdict": "pass", "next": "none", "verdictUnrounded": "pass", "verdictRounded": "pass"}, 0,
     "net 393 and 407 in turn, 1.75 % about their mean: s 1.845, 2.4 s = 4.4 within 15"),
    ("uniformity-of-dosage-units-by-mass",
     {"gross_mg": gross, "shells_mg": [100.0] * 10, "assay_pct": 100, "rounding": "unrounded", "route": ["dosage-units-by-mass"], "loadCount": 2, **RELEASE},
     {"verdict": "cannot-tell", "reasons": ["several-loads"], "next": "none"}, 0, "the mass of two loads together proves nothing of either (rule of conduct)"),
    ("uniformity-of-content", {"contents_pct": [80.0] + [100.0] * 8 + [104.0], "route": ["uniformity-of-content"], **RELEASE},
     {"verdict": "pass", "mean_pct": 98.4, "outsideInner": [1]}, 1e-9, "80/98.4 = 81.3 %: one outside 85 to 115 %, none outside 75 to 125 %; rule from memory"),
    ("uniformity-of-content", {"contents_pct": [80.0, 118.0] + [99.0] * 8, "route": ["uniformity-of-content"], **RELEASE},
     {"verdict": "cannot-tell", "next": "test-further-units", "outsideInner": [1, 2]}, 1e-9, "mean 99: 80.8 % and 119.2 %: two outside, 20 more; rule from memory"),
    ("assurance-of-places", {"places": [{"contents_pct": p} for p in places], "confidence_frac": 0.95},
     {"mean_pct": 101, "meanSquareBetween_pct2": 4, "meanSquareWithin_pct2": 5}, 1e-9, "means 100 and 102: 2 x (1 + 1)/1 = 4; (1 + 1 + 4 + 4)/2 = 5"),
    ("ewma-limit-factor", {"lambda_frac": 1, "inControlRunLength": 370.398}, {"limitFactor_ratio": 3}, 1e-5, "lambda 1 is the Shewhart chart: 3 sigma give 370.398"),
    ("cusum-design", {"shift_ratio": 1, "inControlRunLength": 370}, {"reference_ratio": 0.5, "decisionInterval_ratio": 4.77, "meanRunLength": 9.93}, 0.05,
     "k near half the shift; ISO-like table k 0.5: h 4.77 for 370, and about 9.9 at 1 sigma (from memory)"),
    ("best-dead-band", {"lambda_frac": 0.3, "changeCost": 0, "offTargetCost": 2}, {"meanSquareDeviation_ratio": 1, "everyTimeCost": 2, "cost": 2}, 1e-3,
     "changes that cost nothing are made every time: mean square 1, cost 2"),
    ("ranked-causes", {"values_data": [1, 1, 5, 5], "causes": [{"expected_data": [0, 0, 1, 1]}, {"expected_data": [0, 0, 4, 4]}]},
     {"withoutCause_data2": 16, "ranking": [{"causeCount": 2, "residual_data2": 0, "explained_ratio": 1}, {"causeCount": 1, "residual_data2": 9, "explained_ratio": 0.4375}]},
     1e-12, "4 x 2^2 = 16; 4 x 1.5^2 = 9; 1 - 9/16"),
    ("double-plan", {"lotSize": 10000, "level": "II", "aql": "0.65", "inspection": "normal"},
     {"kind": "double", "planLetter": "L", "firstSampleSize": 125, "secondSampleSize": 125, "firstAcceptanceNumber": 1, "firstRejectionNumber": 4,
      "secondAcceptanceNumber": 4, "secondRejectionNumber": 5}, 0, "MIL-STD-105E, table III-A, letter L, AQL 0.65 (from memory)"),
    ("attribute-design", {"producerQuality_frac": 0.01, "producerRisk_frac": 0.05, "consumerQuality_frac": 0.06, "consumerRisk_frac": 0.1, "law": "binomial"},
     {"sampleSize": n, "acceptanceNumber": ac}, 0, "search over n and Ac with SciPy binom"),
    ("variables-table-plan", {"standard": "MIL-STD-414", "codeLetter": "F", "aql": "1", "inspection": "normal"},
     {"kind": "plan", "sampleSize": 10, "factor_ratio": 1.72}, 1e-9, "MIL-STD-414, table B-1"),
    ("variables-verdict", {"values_data": [10, 12, 14], "sampleSize": 3, "factor_ratio": 1.5, "limit_data": 15.5, "side": "upper"},
     {"verdict": "pass", "mean_data": 12, "sd_data": 2, "qualityIndex_ratio": 1.75}, 1e-12, "(15.5 - 12)/2 = 1.75, not below 1.5"),
    ("design-efficiency", {"runs": [{"levels_ratio": [a, b]} for a in (-1, 1) for b in (-1, 1)], "model": "main-effects"},
     {"isEstimable": True, "dEfficiency_ratio": 1, "logDeterminant_ratio": float(np.log(64))}, 1e-12, "X'X = 4 I of three terms: 64, cube root 4, by 4 runs"),
    ("estimated-limits-run-length", {"subgroupCount": 10000, "subgroupSize": 25, "limitFactor_ratio": 3}, {"meanRunLength": 370.4}, 2,
     "with 10000 subgroups the limits are as good as known: 370.4"),
]
cases = []
for method, inputs, expected, tolerance, working in CASES:
    count = sum(1 for one in cases if one["method"] == f"statistics.{method}")
    cases.append({"id": f"statistics-by-hand.{method}" + (f".{count + 1}" if count else ""), "group": "statistics-by-hand", "method": f"statistics.{method}",
                  "inputs": inputs, "expected": expected, "tolerance": {"abs": tolerance}, "source": f"worked by hand: {working}" if "SciPy" not in working else working})
path = Path(__file__).resolve().parents[2] / "packages/engine/golden/statistics-by-hand.json"
path.write_text("[\n" + ",\n".join(json.dumps(case) for case in cases) + "\n]\n")
print(f"{len(cases)} cases")
