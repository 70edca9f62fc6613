"""Second implementation of the disc station model, in exact-enough arithmetic of another language (Python decimal, 40 digits).

Writes packages/engine/golden/disc-stations.json. It shares no code with the engine; the root on the spring is found in
closed form (a quadratic in the plug length), where the engine bisects. Run: python3 tools/twins/disc_stations.py
"""
import json
from decimal import Decimal as D, getcontext
from pathlib import Path

getcontext().prec = 40
PI = D("3.14159265358979323846264338327950288419716939937510582")


def pressure(rho, a, b, start):
    c = 1 - start / rho
    if c <= 0:
        return D(0)
    if c >= a:
        return None
    return c / (b * (a - c))


def plug_length_on_spring(q, area, a, b, f, k):
    """y with area * (1 - q y) / (b (a - 1 + q y)) = f + k y; the root inside the law's range, above the densest state."""
    aa, bb = b * k * q, b * k * (a - 1) + b * q * f + area * q
    cc = b * f * (a - 1) - area
    root = (bb * bb - 4 * aa * cc).sqrt()
    return (-bb + root) / (2 * aa) if aa else -cc / bb


def run(case):
    v = {key: D(str(value)) for key, value in case.items() if isinstance(value, (int, float)) and not isinstance(value, bool)}
    area = PI * v["boreDiameter_mm"] ** 2 / 4
    feed, height, f0, k = v["feedDensity_g_per_mL"], v["discHeight_mm"], v["preload_N"], v["rate_N_per_mm"]
    a, b, start = v["a_frac"], v["b_per_MPa"], v["initialDensity_g_per_mL"]
    captured, refilled = v.get("captured_mg", D(0)), case.get("isRefilledAfterLastPin", True)
    m, out = feed * area * height, {"masses_mg": [], "reached_mm": [], "regimes": [], "forces_N": []}
    pins = [D(str(p)) for p in case["depths_mm"]]
    for i, p in enumerate(pins):
        if p == 0:
            x, regime, force = D(0), "flush", D(0)
        else:
            total = m + captured
            at_stop = pressure(total / (area * (height - p)), a, b, start)
            at_top = pressure(total / (area * height), a, b, start)
            if at_stop is not None and area * at_stop <= f0:
                x, regime, force, m = p, "on-stop", area * at_stop, total
            elif at_top is None or area * at_top >= f0 + k * p:
                x, regime, force = D(0), "limited", f0 + k * p
                load = force / area
                densest = start / (1 - a * b * load / (1 + b * load))
                m = max(m, min(total, densest * area * height))
            else:
                y = plug_length_on_spring(start * area / total, area, a, b, f0 + k * (p - height), k)
                x = height - y
                regime, force, m = "on-spring", f0 + k * (p - x), total
        if i < len(pins) - 1 or refilled:
            m += v["refill_ratio"] * feed * area * x
        for key, value in zip(out, (m, x, regime, force)):
            out[key].append(value if isinstance(value, str) else float(value))
    out["slugDensity_g_per_mL"] = float(m / (area * height))
    return out


BASE = {
    "feedDensity_g_per_mL": 0.54, "boreDiameter_mm": 6.6, "discHeight_mm": 15.5, "depths_mm": [3.5, 2.2, 1.3, 0.8, 0],
    "refill_ratio": 1, "a_frac": 0.55, "b_per_MPa": 1.6, "initialDensity_g_per_mL": 0.54, "preload_N": 50, "rate_N_per_mm": 6,
}
VARIANTS = {
    "all-on-stop": {},
    "two-on-spring": {"preload_N": 30},
    "deep-pins": {"discHeight_mm": 16, "depths_mm": [10, 7.5, 5, 2.5, 0]},
    "captured": {"captured_mg": 6.5},
    "limited": {"depths_mm": [6, 5, 3, 0.2, 0.1], "preload_N": 12, "rate_N_per_mm": 1, "captured_mg": 8},
    "deep-last-pin": {"depths_mm": [3.1, 2.4, 1.7, 0.9, 0.6], "isRefilledAfterLastPin": False, "preload_N": 40},
    "poor-refill": {"refill_ratio": 0.82, "preload_N": 25, "rate_N_per_mm": 4.5, "feedDensity_g_per_mL": 0.47},
    "denser-than-fit": {"feedDensity_g_per_mL": 0.58, "preload_N": 35},
    "narrow-bore": {"boreDiameter_mm": 4.4, "discHeight_mm": 11, "depths_mm": [2.6, 1.5, 0.9, 0.4, 0], "preload_N": 18},
}

cases = []
for name, change in VARIANTS.items():
    inputs = {**BASE, **change}
    cases.append({
        "id": f"disc-stations.{name}", "group": "disc-stations", "method": "dosing.disc-stations", "inputs": inputs,
        "expected": run(inputs), "tolerance": {"rel": 1e-9, "abs": 1e-9},
        "source": "second implementation in Python decimal arithmetic, spring root in closed form (tools/twins/disc_stations.py)",
    })
path = Path(__file__).resolve().parents[2] / "packages/engine/golden/disc-stations.json"
path.write_text(json.dumps(cases, indent=1) + "\n")
print(f"{len(cases)} cases")
