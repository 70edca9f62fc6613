"""Check values worked by hand; the working stands in each source. Writes packages/engine/golden/by-hand.json.

Areas: 6.6 mm bore, pi x 6.6^2 / 4 = 34.2119 mm2 (3.141593 x 43.56 / 4).
"""
import json
from pathlib import Path

PINS = {
    "feedDensity_g_per_mL": 0.54, "boreDiameter_mm": 6.6, "discHeight_mm": 15.5, "depths_mm": [3.5, 2.2, 1.3, 0.8, 0],
    "refill_ratio": 1, "a_frac": 0.55, "b_per_MPa": 1.6, "initialDensity_g_per_mL": 0.54, "preload_N": 50, "rate_N_per_mm": 6,
}
# One step of 0.1 mm on the stop: f rho0 A x 0.1 = 1 x 0.54 x 34.2119 x 0.1 = 1.84744 mg.
STEP = "1 x 0.54 x 34.2119 x 0.1 = 1.84744 mg"
CASES = [
    ("step-gain.on-stop", "dosing.disc-step-gain", {**PINS, "station": 2, "step_mm": 0.1},
     {"median_mg_per_step": 1.84744, "low90_mg_per_step": 1.84744, "high90_mg_per_step": 1.84744, "steps": 2}, 1e-5,
     f"nothing uncertain, all pins on their stops: {STEP}"),
    ("step-gain.at-the-end", "dosing.disc-step-gain", {**PINS, "station": 2, "step_mm": 0.1, "deepest_mm": 2.2},
     {"median_mg_per_step": 1.84744, "steps": 1}, 1e-5, f"the machine ends here, difference to one side over one step: {STEP}"),
    ("part-change.disc", "dosing.disc-part-change", {**PINS, "discHeightNext_mm": 16},
     {"change_mg": 9.23721}, 1e-4, "all pins on their stops in both discs: 0.54 x 34.2119 x 0.5 = 9.2372 mg (+9 in the design reference)"),
    ("part-change.none", "dosing.disc-part-change", {**PINS, "discHeightNext_mm": 15.5},
     {"change_mg": 0, "before_mg": 430.4547}, 1e-4, "the same disc; 0.54 x 34.2119 x (15.5 + 7.8) = 430.455 mg"),
    ("part-change.springs", "dosing.disc-part-change", {**PINS, "preloadNext_N": 60},
     {"change_mg": 0}, 1e-12, "stronger springs change nothing while every pin stands on its stop"),
    ("unit-spread.alder", "dosing.unit-spread", {"causes_pct": [0.8, 0.8, 0.5, 1.75]},
     {"unit_pct": 2.14301}, 1e-5, "0.64 + 0.64 + 0.25 + 3.0625 = 4.5925; square root 2.14301"),
    ("largest-slug", "dosing.largest-slug",
     {"slugDensity_g_per_mL": 0.8, "boreDiameter_mm": 6.6, "longestSlug_mm": 17.325, "axialSpringback_pct": 5},
     {"mass_mg": 451.597}, 1e-3, "0.8 x 34.2119 x 17.325 / 1.05 = 0.8 x 34.2119 x 16.5 = 451.597 mg"),
    ("slug-margin", "shells.slug-margin", {"longestSlug_mm": 17.3, "released_mm": 16.275}, {"free_mm": 1.025}, 1e-9,
     "17.3 - 16.275 = 1.025 mm (1.0 mm free in the design reference)"),
    ("slug-above-rim", "shells.slug-above-rim", {"dead_mm": 2.2, "released_mm": 16.275, "bodyLength_mm": 18.44, "bodyWall_mm": 0.1},
     {"aboveRim_mm": 0.135}, 1e-9, "2.2 + 16.275 - (18.44 - 0.1) = 0.135 mm (0.1 mm above the rim in the design reference)"),
    ("slug-margin.too-long", "shells.slug-margin", {"longestSlug_mm": 15, "released_mm": 16.8}, {"free_mm": -1.8}, 1e-9,
     "15 - 16.8 = -1.8 mm"),
    ("first-weights", "design.first-weights", {"low98_mg": 361.2, "high98_mg": 499.7, "target_mg": 430, "tareMean_mg": 97},
     {"low_mg": 360, "high_mg": 500, "grossLow_mg": 457, "grossHigh_mg": 597, "roundedTo_mg": 5}, 1e-9,
     "rounded outward to 5 mg: 360 and 500; 97 mg of shell added"),
    ("first-weights.small", "design.first-weights", {"low98_mg": 22.1, "high98_mg": 29.9, "target_mg": 25},
     {"low_mg": 22, "high_mg": 30, "roundedTo_mg": 2}, 1e-9, "below a target of 100 mg rounded outward to 2 mg: 22 and 30"),
    ("half-width", "design.half-width", {"low90_mg": 380, "high90_mg": 482}, {"half_mg": 51}, 1e-9, "(482 - 380) / 2 = 51"),
    ("narrowed.all", "design.narrowed-width", {"half_mg": 50, "share_frac": 1}, {"narrowed_mg": 25}, 1e-9,
     "all of the variance: half the standard deviation, half the width"),
    ("narrowed.part", "design.narrowed-width", {"half_mg": 50, "share_frac": 0.48}, {"narrowed_mg": 40}, 1e-9,
     "50 x square root of (1 - 0.75 x 0.48 = 0.64) = 50 x 0.8 = 40"),
    ("narrowed.nothing", "design.narrowed-width", {"half_mg": 50, "share_frac": 0}, {"narrowed_mg": 50}, 1e-9,
     "no share, nothing gained"),
    ("random.known-answer", "statistics.random-numbers", {"states": [1, 2, 3, 4], "numberCount": 5},
     {"words": [641, 1573767, 3222811527, 3517856514, 836907274]}, 0,
     "xoshiro128++ from state 1, 2, 3, 4: (1 + 4) x 2^7 + 1 = 641; the five words as published by D. Blackman, S. Vigna (from memory)"),
    ("random.uniform", "statistics.random-numbers", {"states": [1, 2, 3, 4], "numberCount": 1},
     {"uniforms_ratio": [671113230.5 / 2**52]}, 1e-22,
     "641 div 64 = 10, 1573767 div 64 = 24590: (10 x 67108864 + 24590 + 0.5) / 2^52"),
    ("mean-square-limits.one", "statistics.mean-square-limits",
     {"meanSquares_data2": [4], "coefficients_ratio": [1], "degreesOfFreedom": [10], "confidence_frac": 0.95},
     {"estimate_data2": 4, "low_data2": 1.9528, "high_data2": 12.319}, 2e-3,
     "one mean square: 10 x 4 / 20.483 = 1.9528 and 10 x 4 / 3.247 = 12.319 (chi-square table, 10 degrees of freedom)"),
    ("mean-square-limits.test", "statistics.mean-square-limits",
     {"meanSquares_data2": [4.2360, 1], "coefficients_ratio": [0.2, -0.2], "degreesOfFreedom": [5, 10], "confidence_frac": 0.95},
     {"estimate_data2": 0.6472, "low_data2": 0}, 1e-3,
     "the lower limit is 0 where F is at its upper 2.5 % point, 4.236 for 5 and 10 degrees of freedom (F table)"),
    ("sorting.even", "statistics.sorting-by-gross",
     {"meanNet_data": 0, "sdNet_data": 1, "meanShell_data": 5, "sdShell_data": 0, "netLow_data": -1.96, "netHigh_data": 1.96,
      "grossLow_data": 4, "grossHigh_data": 6, "allowedBad_frac": 0.01},
     {"isHelp": True, "grossAccepted_frac": 0.6827, "badBefore_frac": 0.05, "badAmongKept_frac": 0, "goodLost_frac": 0.2814,
      "keptMean_data": 0, "keptSd_data": 0.5396}, 1e-4,
     "shells without spread: 0.6827 within one standard deviation, 1 - 0.6827/0.95 = 0.2814 lost; variance 1 - 2 x 0.24197/0.6827 = 0.2911, root 0.5396 (normal table)"),
    ("gross-check.blind", "statistics.gross-check",
     {"meanNet_data": 50, "sdNet_data": 1.5, "meanShell_data": 48, "sdShell_data": 2, "netLow_data": 46.25, "netHigh_data": 53.75},
     {"grade": "blind", "scatter_data": 2, "notFill_frac": 0.64, "guardedHalfWidth_data": -0.25}, 1e-9,
     "4/(2.25 + 4) = 0.64; 3.75 - 2 x 2 = -0.25: nothing is left between the limits (the design reference calls it nearly blind)"),
    ("gross-check.tablet", "statistics.gross-check",
     {"meanNet_data": 262, "sdNet_data": 4.8064, "meanShell_data": 97, "sdShell_data": 2.3, "netLow_data": 242, "netHigh_data": 282, "fault_data": -12},
     {"grade": "blind", "fault_ratio": 2.252, "faultSeen_frac": 0.2272}, 1e-3,
     "sd 4.8064 and 2.3 together 5.3283; 12/5.3283 = 2.252 (2.25 in the design reference); normal table at 2.252 - 3: 0.2272"),
    ("capability.half-normal", "statistics.capability-of-sample",
     {"values_data": [3, 4, 0, 5], "law": "half-normal", "upper_data": 15, "resampleCount": 200},
     {"parameters_ratio": [3.53553], "median_data": 2.38467}, 1e-4,
     "scale: root of (9 + 16 + 0 + 25)/4 = 3.53553; median 0.67449 x 3.53553 = 2.38467"),
    ("position-effects.balanced", "statistics.position-effects",
     {"values_data": [1, 3, 5, 7], "factors": [{"name": "column", "places": [1, 1, 2, 2]}, {"name": "bore", "places": [4, 4, 9, 9]}]},
     {"mean_data": 4, "within_data2": 2, "aliased": [{"name": "bore", "by": "column", "kind": "same"}]}, 1e-6,
     "two groups of two: mean 4, variance within (2 + 2)/2 = 2; the bore changes with the column always"),
]
cases = [
    {"id": f"by-hand.{id}", "group": "by-hand", "method": method, "inputs": inputs, "expected": expected,
     "tolerance": {"abs": tolerance}, "source": f"worked by hand: {working}"}
    for id, method, inputs, expected, tolerance, working in CASES
]
path = Path(__file__).resolve().parents[2] / "packages/engine/golden/by-hand.json"
path.write_text(json.dumps(cases, indent=1) + "\n")
print(f"{len(cases)} cases")
