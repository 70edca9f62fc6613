"""Makes elementary.json: values of elementary functions by mpmath, 50 digits, rounded once to a double.

The arguments are exact doubles. Run: python3 elementary.py > elementary.json
"""
import json
import mpmath

mpmath.mp.dps = 50
SOURCE = f"mpmath {mpmath.__version__} at 50 digits, argument taken as the exact double"
PLAIN = {
    "exp": [-700.25, -100.1, -20.3, -5.5, -1.0, -0.34657359027997, -1e-3, -1e-10, 1e-12, 0.1, 0.5, 1.0, 2.718281828,
            10.01, 33.3, 100.7, 345.678, 700.9],
    "log": [5e-324, 1e-300, 1.5e-100, 1e-10, 0.03, 0.5, 0.7071067811865476, 0.9999, 0.999999999999, 1.0000001, 1.1,
            2.0, 2.718281828459045, 9.87654321, 1000.0, 6.02e23, 1.7e308],
    "log10": [1e-300, 3e-7, 0.02, 0.5, 1.5, 2.0, 3.0, 99.9, 12345.678, 6.02e23],
    "sin": [-1e5, -100.25, -3.0, -0.5, 1e-9, 0.1, 0.785, 1.0, 1.5707963, 2.0, 3.14159, 6.5, 22.0, 355.0, 12345.678, 1e10],
    "cos": [-1e5, -100.25, -3.0, -0.5, 1e-9, 0.1, 0.785, 1.0, 1.5707963, 2.0, 3.14159, 6.5, 22.0, 355.0, 12345.678, 1e10],
}
POWERS = [(2.0, 0.5), (10.0, -3.0), (10.0, 22.0), (0.9, 100.0), (1.0001, 12345.6), (3.7, 5.5), (0.01, 0.33), (1e-10, 20.5),
          (1e150, 2.0), (7.0, 1 / 3), (0.5, 1000.0), (1.5, -40.25), (123.456, 7.89), (0.999999, 1e6), (-3.0, 5.0)]


def case(function, arguments):
    value = mpmath.mpf(getattr(mpmath, "power" if function == "pow" else function)(*map(mpmath.mpf, arguments)))
    return {"id": f"{function}({', '.join(map(repr, arguments))})", "function": function, "arguments": list(arguments),
            "expected": float(value), "source": SOURCE}


CASES = [case(f, [x]) for f, xs in PLAIN.items() for x in xs] + [case("pow", pair) for pair in POWERS]
print('{"set": "elementary", "cases": [')
print(",\n".join(json.dumps(c) for c in CASES))
print("]}")
