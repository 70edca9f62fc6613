import { defineEntry, DomainError, type Entry } from '#catalogue';
import { bodyVolume_mm3 } from './body-volume.ts';
import { capHeadroom } from './cap-headroom.ts';
import { diametralClearance_mm } from './diametral-clearance.ts';
import {
  BODY_DIAMETER,
  BODY_DOUBLE_WALL,
  BODY_LENGTH,
  CAP_DIAMETER,
  CAP_DOUBLE_WALL,
  CAP_LENGTH,
  CLOSED_LENGTH,
  GEOMETRY,
  NO_STANDARD,
} from './entry-fields.ts';
import { overlap_mm } from './overlap.ts';
import { slugBetweenDomes } from './slug-between-domes.ts';
import { UNIVERSITY_VOLUMES } from './university-volumes.table.ts';

const SIZES = UNIVERSITY_VOLUMES.map(({ size }) => size);

export const geometryEntries: readonly Entry[] = [
  defineEntry({
    id: 'shells.body-volume-table',
    title: 'Body volume by size, university table',
    equation: '\\text{table lookup}',
    inputs: [{ key: 'size', title: 'size of the shell', kind: 'choice', choices: SIZES }],
    outputs: [{ key: 'bodyVolume_mL', title: 'body volume', kind: 'number', unit: 'mL' }],
    sources: [
      {
        text: 'University of North Carolina, Pharmaceutics and Compounding Laboratory, page "Hard Gelatin Capsules", table of size and volume',
        read: 'seen',
      },
    ],
    validity: `A check beside the chart of this product. ${NO_STANDARD} Volumes of charts differ by up to 10 % (size 3 from 0.27 to 0.30, size 00 from 0.90 to 0.95 mL; size 4 is 0.20 here, 0.21 elsewhere).`,
    restsOn: 'a table for teaching; custom of the trade',
    compute: ({ size }) => ({
      bodyVolume_mL: UNIVERSITY_VOLUMES.find((row) => row.size === size)!.bodyVolume_mL,
    }),
  }),
  defineEntry({
    id: 'shells.body-volume',
    title: 'Body volume from outer dimensions',
    equation:
      'V = \\pi r^2 (L-t-r) + \\tfrac{2}{3}\\pi r^3,\\quad r = \\tfrac{1}{2}OD-t,\\quad t = \\tfrac{1}{2}\\,\\text{double wall}',
    inputs: [BODY_LENGTH, BODY_DIAMETER, BODY_DOUBLE_WALL],
    outputs: [{ key: 'bodyVolume_mm3', title: 'body volume up to the rim', kind: 'number', unit: 'mm3' }],
    sources: [GEOMETRY],
    validity:
      'Hemispherical ends; reproduces the volumes of trade charts to 5 %, so calibrate with water where that counts. "Wall thickness" in shell sheets is the double wall.',
    restsOn: 'geometry on three measured lengths',
    compute: (body) => ({ bodyVolume_mm3: bodyVolume_mm3(body) }),
  }),
  defineEntry({
    id: 'shells.cap-headroom',
    title: 'Headroom in the locked cap',
    equation:
      'h = L_{closed}-L_{body}-t,\\quad V = \\pi h^2\\left(r-\\tfrac{h}{3}\\right)\\ (h \\le r),\\quad r = \\tfrac{1}{2}OD-t',
    inputs: [CLOSED_LENGTH, BODY_LENGTH, CAP_DIAMETER, CAP_DOUBLE_WALL],
    outputs: [
      { key: 'headroom_mm', title: 'height above the rim of the body', kind: 'number', unit: 'mm' },
      { key: 'headroomVolume_mm3', title: 'volume above the rim of the body', kind: 'number', unit: 'mm3' },
    ],
    sources: [GEOMETRY],
    validity:
      'Hemispherical ends; above the dome the cylinder is added. A flat slug cannot use all of it: its edge meets the dome first.',
    restsOn: 'a difference of lengths, each with a tolerance of 0.3 mm',
    compute: (shell) => capHeadroom(shell),
  }),
  defineEntry({
    id: 'shells.diametral-clearance',
    title: 'Play of the body in the cap',
    equation: 'c = (OD_{cap}-2t_{cap})-OD_{body}',
    inputs: [CAP_DIAMETER, CAP_DOUBLE_WALL, BODY_DIAMETER],
    outputs: [{ key: 'clearance_mm', title: 'clearance over the diameter', kind: 'number', unit: 'mm' }],
    sources: [{ text: 'geometry of round rims', read: 'geometry' }],
    validity:
      'Away from lock and groove. It is 0.07-0.1 mm over the diameter, 0.03-0.05 mm per side, as small as the tolerance of the diameters (0.06 mm): a body that telescopes is a matter of alignment and tolerance, not of force.',
    restsOn: 'a difference of diameters of the size of their tolerance',
    compute: (shell) => ({ clearance_mm: diametralClearance_mm(shell) }),
  }),
  defineEntry({
    id: 'shells.overlap',
    title: 'Overlap of cap and body',
    equation: 'l = L_{body}+L_{cap}-L_{closed}',
    inputs: [BODY_LENGTH, CAP_LENGTH, CLOSED_LENGTH],
    outputs: [{ key: 'overlap_mm', title: 'overlap', kind: 'number', unit: 'mm' }],
    sources: [{ text: 'geometry of lengths', read: 'geometry' }],
    validity:
      'Locked shell. Charts have typing errors: locked < pre-lock < body + cap must hold, else the figure is refused.',
    restsOn: 'three lengths, each with a tolerance of about 0.3 mm',
    compute: (shell) => ({ overlap_mm: overlap_mm(shell) }),
  }),
  defineEntry({
    id: 'shells.slug-fit',
    title: 'Slug between the domes of a locked shell',
    equation:
      '\\begin{aligned} dead &= r_i-\\sqrt{r_i^2-r_s^2} \\\\ proud &= \\sqrt{r_c^2-r_s^2}-(r_c-h) \\\\ longest &= (L-t)-dead+proud \\end{aligned}',
    inputs: [
      { key: 'boreRadius_mm', title: 'radius of the slug, r_s', kind: 'number', unit: 'mm', above: 0, max: 25 },
      {
        key: 'bodyInnerRadius_mm',
        title: 'inner radius of the body, r_i',
        kind: 'number',
        unit: 'mm',
        above: 0,
        max: 25,
      },
      {
        key: 'capInnerRadius_mm',
        title: 'inner radius of the cap, r_c',
        kind: 'number',
        unit: 'mm',
        above: 0,
        max: 25,
      },
      { key: 'capHeadroom_mm', title: 'headroom in the cap, h', kind: 'number', unit: 'mm', above: 0, max: 100 },
      BODY_LENGTH,
      { key: 'bodyWall_mm', title: 'wall of the body, single, t', kind: 'number', unit: 'mm', above: 0, max: 1 },
    ],
    outputs: [
      { key: 'dead_mm', title: 'empty height under the slug', kind: 'number', unit: 'mm' },
      { key: 'proud_mm', title: 'height the slug may stand above the rim', kind: 'number', unit: 'mm' },
      { key: 'longestSlug_mm', title: 'longest rigid slug', kind: 'number', unit: 'mm' },
    ],
    sources: [GEOMETRY],
    validity:
      'Rigid slug with sharp edges, upright, after axial springback; hemispherical ends. A bore not below both inner radii is refused. Proud below 0: the slug must stay that far inside; longest 0 or less: no slug of this bore fits.',
    restsOn: 'geometry; the inside of real ends is thicker than the wall',
    compute: (input) => slugBetweenDomes(input),
  }),
  defineEntry({
    id: 'shells.slug-margin',
    title: 'What a slug leaves free in a locked shell',
    equation: 's = L_{max} - L',
    inputs: [
      { key: 'longestSlug_mm', title: 'longest slug that stays whole', kind: 'number', unit: 'mm', min: -60, max: 60 },
      { key: 'released_mm', title: 'length of the slug once released', kind: 'number', unit: 'mm', above: 0, max: 60 },
    ],
    outputs: [{ key: 'free_mm', title: 'free, from the edge of the slug to the dome', kind: 'number', unit: 'mm' }],
    sources: [GEOMETRY],
    validity: 'Below 0 the cap presses on the slug: it crumbles or does not fit.',
    restsOn: 'the figures of the shell and the springback of the slug',
    compute: ({ longestSlug_mm, released_mm }) => ({ free_mm: longestSlug_mm - released_mm }),
  }),
  defineEntry({
    id: 'shells.slug-above-rim',
    title: 'How far a slug stands above the rim of the body',
    equation: 's = dead + L - (L_b-t)',
    inputs: [
      { key: 'dead_mm', title: 'empty height under the slug', kind: 'number', unit: 'mm', min: 0, max: 60 },
      { key: 'released_mm', title: 'length of the slug once released', kind: 'number', unit: 'mm', above: 0, max: 60 },
      BODY_LENGTH,
      { key: 'bodyWall_mm', title: 'wall of the body, single, t', kind: 'number', unit: 'mm', above: 0, max: 1 },
    ],
    outputs: [{ key: 'aboveRim_mm', title: 'above the rim, below 0 inside', kind: 'number', unit: 'mm' }],
    sources: [GEOMETRY],
    validity: 'The slug stands on the dome of the body, upright. What stands above the rim the cap pushes home.',
    restsOn: 'geometry; the springback of the slug',
    compute: ({ dead_mm, released_mm, bodyLength_mm, bodyWall_mm }) => ({
      aboveRim_mm: dead_mm + released_mm - (bodyLength_mm - bodyWall_mm),
    }),
  }),
  defineEntry({
    id: 'shells.free-on-axis',
    title: 'Free height over the middle of a slug',
    equation: 's = h - s_r',
    inputs: [
      { key: 'capHeadroom_mm', title: 'headroom in the cap, h', kind: 'number', unit: 'mm', above: 0, max: 100 },
      {
        key: 'aboveRim_mm',
        title: 'slug above the rim, below 0 inside',
        kind: 'number',
        unit: 'mm',
        min: -60,
        max: 60,
      },
    ],
    outputs: [{ key: 'free_mm', title: 'from the slug to the inside of the cap', kind: 'number', unit: 'mm' }],
    sources: [GEOMETRY],
    validity: 'On the axis only: the edge of a flat slug meets the dome before its middle does.',
    restsOn: 'geometry; the springback of the slug',
    compute: ({ capHeadroom_mm, aboveRim_mm }) => ({ free_mm: capHeadroom_mm - aboveRim_mm }),
  }),
  defineEntry({
    id: 'shells.dead-volume',
    title: 'Volume left empty under a flat slug',
    equation: 'V = \\frac{\\pi\\,dead^2\\,(3 r_i - dead)}{3}',
    inputs: [
      { key: 'dead_mm', title: 'empty height under the slug', kind: 'number', unit: 'mm', min: 0, max: 25 },
      {
        key: 'bodyInnerRadius_mm',
        title: 'inner radius of the body, r_i',
        kind: 'number',
        unit: 'mm',
        above: 0,
        max: 25,
      },
    ],
    outputs: [{ key: 'volume_mm3', title: 'volume', kind: 'number', unit: 'mm3' }],
    sources: [{ text: 'volume of a cap of a sphere', read: 'geometry' }],
    validity:
      'Hemispherical end; the slug does not stand higher in it than its radius. A real end is thicker than the wall.',
    restsOn: 'geometry',
    compute: ({ dead_mm, bodyInnerRadius_mm }) => {
      if (dead_mm > bodyInnerRadius_mm)
        throw new DomainError('out-of-range', { dead_mm, min: 0, max: bodyInnerRadius_mm });
      return { volume_mm3: (Math.PI * dead_mm * dead_mm * (3 * bodyInnerRadius_mm - dead_mm)) / 3 };
    },
  }),
];
