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
    ("free-on-axis", "shells.free-on-axis", {"capHeadroom_mm": 3.15, "aboveRim_mm": 0.135}, {"free_mm": 3.015}, 1e-9,
     "3.15 - 0.135 = 3.015 mm (3.0 mm on the axis in the design reference)"),
    ("dead-volume", "shells.dead-volume", {"dead_mm": 1, "bodyInnerRadius_mm": 4}, {"volume_mm3": 11.51917}, 1e-5,
     "3.141593 x 1 x (12 - 1) / 3 = 11.51917 mm3"),
    ("dead-volume.hemisphere", "shells.dead-volume", {"dead_mm": 3, "bodyInnerRadius_mm": 3}, {"volume_mm3": 56.54867}, 1e-5,
     "a hemisphere: 2 x 3.141593 x 27 / 3 = 56.54867 mm3"),
    ("tamped-density", "dosing.tamped-density",
     {"pressed_mg": 286.354, "boreDiameter_mm": 6.6, "discHeight_mm": 15.5, "reached_mm": 3.5}, {"density_g_per_mL": 0.6975}, 1e-5,
     "0.54 x 34.2119 x 15.5 = 286.354 mg pressed into 12 mm: 286.354 / (34.2119 x 12) = 0.6975 g/mL"),
    ("springback", "dosing.released-slug",
     {"discHeight_mm": 15.5, "boreDiameter_mm": 6.6, "axialSpringback_pct": 5, "radialSpringback_pct": 1},
     {"released_mm": 16.275, "springback_mm": 0.775}, 1e-9, "15.5 x 1.05 = 16.275 mm, 15.5 x 0.05 = 0.775 mm"),
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
]
cases = [
    {"id": f"by-hand.{id}", "group": "by-hand", "method": method, "inputs": inputs, "expected": expected,
     "tolerance": {"abs": tolerance}, "source": f"worked by hand: {working}"}
    for id, method, inputs, expected, tolerance, working in CASES
]
path = Path(__file__).resolve().parents[2] / "packages/engine/golden/by-hand.json"
path.write_text(json.dumps(cases, indent=1) + "\n")
print(f"{len(cases)} cases")
