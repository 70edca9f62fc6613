import { cos, sin } from '#elementary';

/**
 * Arc tangent with the same bits on every JavaScript engine, by Newton steps on sine and cosine.
 *
 * @param x - any number
 * @returns angle in radians, from -pi/2 to pi/2; NaN for NaN
 * @throws nothing
 * @source tan(a - b) = (tan a - tan b) / (1 + tan a tan b)
 * @validity relative error below 1e-15
 */
export function arcTangent(x: number): number {
  if (x < 0) return -arcTangent(-x);
  if (x > 1) return 0.5 * Math.PI - arcTangent(1 / x);
  // Error of the first guess below 0.005; each step raises it to the third power.
  let angle = x / (1 + 0.28 * x * x);
  for (let step = 0; step < 3; step++) {
    const [height, width] = [sin(angle), cos(angle)];
    angle += (x * width - height) / (width + x * height);
  }
  return angle;
}
