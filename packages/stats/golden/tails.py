"""Makes tails.json: normal and chi-square tails by mpmath at 60 digits. Run: python3 tails.py > tails.json"""
import json
import mpmath

mpmath.mp.dps = 60
SOURCE = f"mpmath {mpmath.__version__} at 60 digits, erfc and gammainc, arguments taken as exact doubles"
Z = [-38.0, -37.5, -30.1, -20.05, -12.3, -9.99, -7.01, -5.66, -5.65, -3.3, -1.7, -0.6745, -0.6744, -0.3, -1e-8, 0.2, 0.67, 1.3, 2.9]
X = {1: [1e-20, 0.3, 0.999, 1.001, 8.8, 40.3, 700.5], 2: [1e-9, 1.5, 2.5, 60.2], 3: [0.01, 2.9, 3.1, 33.3],
     9: [0.05, 1.7, 8.9, 9.1, 25.25, 80.8], 18: [0.5, 7.7, 18.2, 55.5], 19: [0.6, 18.7, 30.3, 61.6], 29: [3.3, 28.8, 45.4, 90.9],
     100: [40.4, 99.5, 101.5, 200.2], 999: [700.7, 998.5, 1234.5, 2222.2], 1000: [600.6, 1000.5, 1500.5, 2500.5]}


def record(identity, inputs, value):
    return {"id": identity, "source": SOURCE, "inputs": inputs, "expected": {"value": float(value)}}


def chi_square(k, x):
    half = mpmath.mpf(x) / 2
    lower = mpmath.gammainc(mpmath.mpf(k) / 2, 0, half, regularized=True)
    upper = mpmath.gammainc(mpmath.mpf(k) / 2, half, mpmath.inf, regularized=True)
    return [record(f"chi2-{k}-{x}-{tail}", {"law": "chi2", "x": x, "degreesOfFreedom": k, "tail": tail}, value)
            for tail, value in (("lower", lower), ("upper", upper))]


cases = [record(f"normal-{z}", {"law": "normal", "x": z, "tail": "lower"}, mpmath.erfc(-mpmath.mpf(z) / mpmath.sqrt(2)) / 2)
         for z in Z]
for k, xs in X.items():
    for x in xs:
        cases += chi_square(k, x)
print('{"set": "tails", "cases": [\n' + ",\n".join(map(json.dumps, cases)) + "\n]}")
