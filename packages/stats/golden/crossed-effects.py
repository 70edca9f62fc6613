"""Crossed random effects by brute force: the dense restricted likelihood, minimised without gradients, and predictions from it.

Writes crossed-effects.json beside this file. NumPy and SciPy; shares no step with the mixed-model equations of the program.
"""
import json
from pathlib import Path

import numpy as np
from scipy.optimize import minimize


def criterion(values, designs, variances, within):
    n = len(values)
    v = within * np.eye(n) + sum(s * z @ z.T for s, z in zip(variances, designs))
    one = np.ones((n, 1))
    vi = np.linalg.inv(v)
    information = (one.T @ vi @ one).item()
    mean = (one.T @ vi @ values).item() / information
    rest = values - mean
    return (n - 1) * np.log(2 * np.pi) + np.linalg.slogdet(v)[1] + np.log(information) + rest @ vi @ rest, mean, vi, information


def fit(name, values, factors):
    values = np.asarray(values, float)
    designs = []
    for levels in factors.values():
        order = sorted(set(levels))
        designs.append(np.array([[1.0 if level == one else 0.0 for one in order] for level in levels]))
    spread = values.var(ddof=1)

    def at(roots):
        return criterion(values, designs, [r * r for r in roots[:-1]], roots[-1] ** 2 + 1e-12)[0]

    best = None
    for start in (0.3, 0.7, 1.2):
        x = np.full(len(designs) + 1, start * np.sqrt(spread))
        for _ in range(6):
            found = minimize(at, x, method="Nelder-Mead", options={"xatol": 1e-11, "fatol": 1e-13, "maxiter": 20000, "maxfev": 20000})
            x = found.x
        if best is None or found.fun < best.fun:
            best = found
    variances = [float(r * r) for r in best.x[:-1]]
    within = float(best.x[-1] ** 2 + 1e-12)
    value, mean, vi, information = criterion(values, designs, variances, within)
    one = np.ones(len(values))
    projected = vi - np.outer(vi @ one, one @ vi) / information
    effects = [(s * z.T @ vi @ (values - mean)).tolist() for s, z in zip(variances, designs)]
    errors = [np.sqrt(np.maximum(0, np.diag(s * np.eye(z.shape[1]) - s * s * z.T @ projected @ z))).tolist() for s, z in zip(variances, designs)]
    return {
        "id": name, "values": values.tolist(), "factors": [{"name": k, "levels": list(v)} for k, v in factors.items()],
        "variances": variances, "within": within, "mean": mean, "criterion": value, "effects": effects, "standardErrors": errors,
    }


rng = np.random.default_rng(20)
rows, columns = [i for i in range(6) for _ in range(8)], [j for _ in range(6) for j in range(8)]
full = 100 + np.repeat(rng.normal(0, 2, 6), 8) + np.tile(rng.normal(0, 3, 8), 6) + rng.normal(0, 1, 48)
keep = [i for i in range(48) if i not in (3, 4, 17, 30, 31, 32, 45)]
strokes = [i // 6 for i in range(60)]
groups, carriers, bores = [s % 3 for s in strokes], [s % 5 for s in strokes], [i % 6 for i in range(60)]
mass = 430 + np.array([0, 4, -5.0])[groups] + rng.normal(0, 3, 6)[bores] + rng.normal(0, 5, 60)
cases = [
    fit("crossed table, one value a cell", full.round(3), {"row": rows, "column": columns}),
    fit("the same with seven cells missing", full.round(3)[keep], {"row": [rows[i] for i in keep], "column": [columns[i] for i in keep]}),
    fit("three groups on five carriers, six bores", mass.round(2), {"group": groups, "carrier": carriers, "bore": bores}),
]
path = Path(__file__).with_name("crossed-effects.json")
path.write_text("[\n" + ",\n".join(json.dumps(case) for case in cases) + "\n]\n")
print(f"{len(cases)} cases")
for case in cases:
    print(case["id"], case["variances"], case["within"], case["criterion"])
