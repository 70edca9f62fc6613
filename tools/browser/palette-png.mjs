import { crc32, deflateSync, inflateSync } from 'node:zlib';

const SIGNATURE = Buffer.from('89504e470d0a1a0a', 'hex');
const MOST_COLOURS = 256;

/**
 * A screenshot with a palette: half of the bytes or less. Of more than 256 colours the frequent ones stay, and the others
 * become the nearest of them. PNG, W3C Recommendation: chunks, filters 0 to 4, colour types 2, 3, 6.
 *
 * @param {Buffer} png - as Chromium writes it: 8 bits a channel, red, green, blue (alpha), not interlaced
 * @returns {Buffer} the same picture with at most 256 colours
 */
export function palettePng(png) {
  const { width, height, colours } = decoded(png);
  const palette = frequent(colours);
  const indexOf = new Map(palette.map((colour, index) => [colour, index]));
  const rows = Buffer.alloc(height * (width + 1));
  for (let i = 0; i < colours.length; i++) {
    const colour = colours[i];
    if (!indexOf.has(colour)) indexOf.set(colour, nearest(palette, colour));
    rows[Math.floor(i / width) * (width + 1) + 1 + (i % width)] = indexOf.get(colour);
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 3, 0, 0, 0], 8);
  const table = Buffer.from(palette.flatMap(channels));
  const parts = [chunk('IHDR', head), chunk('PLTE', table), chunk('IDAT', deflateSync(rows, { level: 9 }))];
  return Buffer.concat([SIGNATURE, ...parts, chunk('IEND', Buffer.alloc(0))]);
}

function decoded(png) {
  const parts = chunksOf(png);
  const head = parts.find(({ name }) => name === 'IHDR').data;
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  const size = { 2: 3, 6: 4 }[head[9]];
  if (head[8] !== 8 || size === undefined || head[12] !== 0) throw new Error('not a PNG as Chromium writes it');
  const packed = Buffer.concat(parts.filter(({ name }) => name === 'IDAT').map(({ data }) => data));
  const bytes = unfiltered(inflateSync(packed), { width, height, size });
  const colours = Array.from({ length: width * height }, (_, i) => {
    const [r, g, b] = [0, 1, 2].map((j) => bytes[i * size + j]);
    return (r << 16) | (g << 8) | b;
  });
  return { width, height, colours };
}

function chunksOf(png) {
  const found = [];
  for (let at = SIGNATURE.length; at < png.length;) {
    const length = png.readUInt32BE(at);
    found.push({ name: png.toString('latin1', at + 4, at + 8), data: png.subarray(at + 8, at + 8 + length) });
    at += length + 12;
  }
  return found;
}

function unfiltered(lines, { width, height, size }) {
  const stride = width * size;
  const bytes = Buffer.alloc(height * stride);
  for (let y = 0; y < height; y++) {
    const filter = lines[y * (stride + 1)];
    for (let x = 0; x < stride; x++) {
      const at = y * stride + x;
      const left = x < size ? 0 : bytes[at - size];
      const up = y === 0 ? 0 : bytes[at - stride];
      const upLeft = x < size || y === 0 ? 0 : bytes[at - stride - size];
      bytes[at] = lines[y * (stride + 1) + 1 + x] + [0, left, up, (left + up) >> 1, paeth(left, up, upLeft)][filter];
    }
  }
  return bytes;
}

function paeth(left, up, upLeft) {
  const guess = left + up - upLeft;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - upLeft)];
  if (a <= b && a <= c) return left;
  return b <= c ? up : upLeft;
}

function frequent(colours) {
  const counts = new Map();
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  const byCount = [...counts].sort(([a, n], [b, m]) => m - n || a - b);
  return byCount.slice(0, MOST_COLOURS).map(([colour]) => colour);
}

function nearest(palette, colour) {
  const to = channels(colour);
  const distances = palette.map((each) => channels(each).reduce((sum, value, i) => sum + (value - to[i]) ** 2, 0));
  return distances.indexOf(Math.min(...distances));
}

const channels = (colour) => [colour >> 16, (colour >> 8) & 255, colour & 255];

function chunk(name, data) {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}
