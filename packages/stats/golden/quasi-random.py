"""Makes quasi-random.json: words (32 bits) of the unshifted Sobol sequence by scipy. Run: python3 quasi-random.py > quasi-random.json"""
import json
import scipy
from scipy.stats import qmc

INDICES = [1, 2, 3, 4, 5, 7, 8, 13, 31, 64, 100, 255, 511, 512, 777, 1023]
points = qmc.Sobol(24, scramble=False, bits=32).random(1024)
source = f"scipy {scipy.__version__} stats.qmc.Sobol(24, scramble=False, bits=32), times 2^32"
cases = [{"id": f"point-{i}", "source": source, "inputs": {"index": i},
          "expected": {"words": [int(x * 2**32) for x in points[i]]}} for i in INDICES]
print('{"set": "quasi-random", "cases": [\n' + ",\n".join(map(json.dumps, cases)) + "\n]}")
