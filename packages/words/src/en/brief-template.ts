/** Text of an empty brief: what is asked, and how it is measured. It is not in order until the figures are given. */
export const BRIEF_TEMPLATE = `# A brief: what must be in each capsule, of what, in which shells, on which filler, by which tests.
#
# Every number carries its unit in its key, with a decimal point. A number alone is one measurement; {mean, sd, n} are
# repeated measurements; guess, or a key that is left out, takes the trade's guess, which is wide and is called a guess.

format: 1
product: { code: NEW-01, name: New product }

# Printed on top of the setting sheet: what people must know before they handle this product.
# cautions:
#   - Dust of the blend can explode. Keep to the explosion protection of the room.

parts:
  - name: blend
    dose: powder
    # The rule of the dossier: fixed-fill (fill_mg), follows-assay (blendLoad_pct of the substance) or fixed-total (total_mg).
    target:
      rule: fixed-fill
      # Of each substance the label claim, claim_mg; saltFactor_ratio, assayAnhydrous_pct and water_pct where they count.
      substances:
        - name: substance 1
    # Ten units of blend from the container say how even it is.
    blendRsd_pct: guess
    material:
      # Poured and tapped density are asked, both: one cylinder, once. bulkDensity_g_per_mL, tappedDensity_g_per_mL
      # A cup pressed into the bed of the bowl, struck and weighed.
      feedDensity_g_per_mL: guess
      # One slug pressed with a known force in a die of the bore.
      compression: guess

# Shells that the dossier allows, in order of preference. Weigh 50 empty shells of the lot.
shells: []

# The invented demo filler, or a file beside this one, such as ./ours.filler.yaml
filler: generic

# The dossier's limits of the net mass, in % of the target.
inProcess:
  sampleCount: guess

# The tests that the dossier names, each for release or in-process.
route: []
`;
