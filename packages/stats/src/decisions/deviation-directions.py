"""Makes the table in src/decisions/deviation-directions.ts: how often a random direction has its v in each of 512 bins.

20 standard normal values less their mean have a direction that does not depend on their length. v = the larger of the third
largest |component| and half the largest. 2^28 directions; numpy SFC64, seed 2905. Run: python3 deviation-directions.py
"""
import numpy as np

BINS = 512
BATCH = 2**16
BATCHES = 2**12
generator = np.random.Generator(np.random.SFC64(2905))
counts = np.zeros(BINS, dtype=np.int64)
for _ in range(BATCHES):
    z = generator.standard_normal((BATCH, 20))
    z -= z.mean(axis=1, keepdims=True)
    length = np.sqrt((z * z).sum(axis=1))
    size = np.partition(np.abs(z), (17, 19), axis=1)
    v = np.maximum(size[:, 17], 0.5 * size[:, 19]) / length
    counts += np.bincount((v * BINS).astype(np.int64), minlength=BINS)
first = int(np.flatnonzero(counts)[0])
last = int(np.flatnonzero(counts)[-1])
assert counts.sum() == BATCH * BATCHES
print(first, last)
print(", ".join(str(c) for c in counts[first:last + 1]))
