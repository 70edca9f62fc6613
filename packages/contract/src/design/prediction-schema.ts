import { z } from 'zod';
import { findingSchema } from './finding-schema.ts';

const basis = z.enum(['measured', 'guess', 'calibrated']);

export const settingsSchema = z.strictObject({
  parts: z.record(z.string(), z.string()).describe('Part number by slot'),
  values: z.record(z.string(), z.number()).describe('Value by adjuster; the key carries the unit'),
});

const spreadSchema = z.strictObject({
  components: z.array(
    z.strictObject({
      cause: z.string(),
      sd_pct: z.number().min(0),
      sharedBy: z.enum(['stroke', 'column', 'bore', 'unit']),
    }),
  ),
  unit_pct: z.number().min(0).describe('Spread between capsules, one sd, % of the mass'),
  unsure_pct: z.number().min(0).describe('How unsure that spread is, one sd'),
  basis,
});

const stationSchema = z.strictObject({
  station: z.int().min(1).describe('Number of the station, 1 is the first'),
  adjuster: z.string(),
  set_mm: z.number().min(0).describe('Depth at the stop, below the disc top'),
  reached_mm: z.number().min(0),
  regime: z.enum(['on-stop', 'on-spring', 'limited', 'flush']),
  force_N: z.number().min(0).optional(),
  pressure_MPa: z.number().min(0).optional(),
  density_g_per_mL: z.number(),
  captured_mg: z.number(),
  mass_mg: z.number().describe('Mass in the bore when the station is left'),
});

export const predictionSchema = z.strictObject({
  mass_mg: z.number().describe('Mean mass at the prior means of all parameters'),
  density_g_per_mL: z.number(),
  released_mm: z.number().describe('Length of the dose once released'),
  bore_mm: z.number(),
  width_mm: z.number(),
  longest_mm: z.number().describe('Longest dose of this width that the closed shell keeps whole'),
  fit: z.enum(['rigid', 'by-crumbling', 'does-not-fit']),
  gapLoss_pct: z
    .strictObject({ basis, mean: z.number(), sd: z.number(), halvedBy: z.string().optional() })
    .describe('Powder lost through gaps, % of the weight: consumption only'),
  stations: z.array(stationSchema),
  profile: z.array(z.strictObject({ depth_frac: z.number(), density_g_per_mL: z.number() })),
  spread: spreadSchema,
  warnings: z.array(findingSchema),
});

export const intervalSchema = z.strictObject({
  mean_mg: z.number(),
  sd_mg: z.number().min(0),
  low90_mg: z.number(),
  high90_mg: z.number(),
  low98_mg: z.number(),
  high98_mg: z.number(),
  how: z.enum(['sampled', 'first-order']),
  otherRegime_frac: z.number().min(0).max(1),
  shares: z.array(
    z.strictObject({
      key: z.string(),
      share_frac: z.number().min(0).max(1),
      basis,
      halvedBy: z.string().optional(),
    }),
  ),
});

export const gainsSchema = z.strictObject({
  settings: z.array(
    z.strictObject({
      key: z.string(),
      step_mm: z.number(),
      median_mg_per_step: z.number(),
      low90_mg_per_step: z.number(),
      high90_mg_per_step: z.number(),
      otherRegime_frac: z.number().min(0).max(1),
    }),
  ),
  parts: z.array(
    z.strictObject({
      slot: z.string(),
      from: z.string(),
      to: z.string(),
      change_mg: z.number(),
      changeWorkingKept_mg: z.number(),
      changeAllKept_mg: z.number(),
    }),
  ),
});
