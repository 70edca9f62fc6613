/** What a value of the brief is called on the screen, and one sentence of help. By kind: the path without positions in lists. */
export const BRIEF_FIELD_WORDS = {
  format: { label: 'Form of the file', help: 'Always 1.' },
  product: { label: 'Product', help: 'Which product it is.' },
  'product.code': { label: 'Code', help: 'Names the product in the store and on every sheet.' },
  'product.name': { label: 'Name', help: 'As people call it.' },
  cautions: {
    label: 'Cautions',
    help: 'Printed on top of the setting sheet, written by the people who know the substance and the machine.',
  },
  parts: { label: 'What goes into the capsule', help: 'One dose of powder for now.' },
  'parts.name': { label: 'Name of the part', help: 'What is filled, such as “blend B-117”.' },
  'parts.dose': { label: 'Kind of dose', help: 'Powder for now.' },
  'parts.target': { label: 'Target', help: 'The rule comes from the dossier; here it is computed, not approved.' },
  'parts.target.rule': {
    label: 'How the target is set',
    help: 'The dossier says what stays when the assay changes: the fill, the content or the total.',
  },
  'parts.target.fill_mg': { label: 'Fill', help: 'The dossier’s net mass of powder in one capsule.' },
  'parts.target.total_mg': { label: 'Total', help: 'The dossier’s net mass in one capsule, diluent included.' },
  'parts.target.otherExcipients_mg': {
    label: 'Other excipients',
    help: 'Everything in the blend besides substances and diluent; left out, it is 0.',
  },
  'parts.target.follows': {
    label: 'Substance that sets the fill',
    help: 'Its load decides; has to be named as soon as there are two substances.',
  },
  'parts.target.substances': { label: 'Substances', help: 'Everything the label claims a quantity of.' },
  'parts.target.substances.name': { label: 'Substance', help: 'As the label names it, once in a part.' },
  'parts.target.substances.claim_mg': {
    label: 'Label claim',
    help: 'Per capsule, as the form that the label names (base or salt).',
  },
  'parts.target.substances.saltFactor_ratio': {
    label: 'Salt factor',
    help: 'Mass of the form that is weighed per mass of the form that is claimed; left out, it is 1.',
  },
  'parts.target.substances.assayAnhydrous_pct': {
    label: 'Assay, anhydrous',
    help: 'Of the substance on the anhydrous (dried) basis; left out, it is 100 %.',
  },
  'parts.target.substances.water_pct': {
    label: 'Water',
    help: 'Of the substance as it is; enter 0 when the assay is given “as is”, since it then contains the water already.',
  },
  'parts.target.substances.blendLoad_pct': {
    label: 'Load found in the blend',
    help: 'Pure anhydrous substance per mass of blend, from the assay of the blend.',
  },
  'parts.target.substances.overage': {
    label: 'Overage',
    help: 'Extra substance above the claim; only with a reason and a reference, else none.',
  },
  'parts.target.substances.overage.amount_pct': { label: 'Overage', help: 'Above the claim, not for machine losses.' },
  'parts.target.substances.overage.reason': { label: 'Reason', help: 'Why the overage is needed.' },
  'parts.target.substances.overage.reference': { label: 'Reference', help: 'Where it was approved.' },
  'parts.blendRsd_pct': {
    label: 'Unevenness of the blend',
    help: 'Relative standard deviation of the concentration between units of fill, which weighing cannot see; left out, it is 2 %, a guess.',
  },
  'parts.assayError_pct': {
    label: 'Error of the assay',
    help: 'What the assay may be off for the whole lot, as one standard deviation; left out, it is 1 %, a guess.',
  },
  'parts.material': { label: 'Powder', help: 'Poured and tapped density are asked; all the rest has a guess.' },
  'parts.material.lot': { label: 'Lot', help: 'Lot of the blend that was measured.' },
  'parts.material.bulkDensity_g_per_mL': {
    label: 'Poured density',
    help: 'Mass over volume of powder poured into a cylinder.',
  },
  'parts.material.tappedDensity_g_per_mL': {
    label: 'Tapped density',
    help: 'The same cylinder after tapping until the volume stays.',
  },
  'parts.material.feedDensity_g_per_mL': {
    label: 'Feed density',
    help: 'Press a cup into the bed of the bowl, strike it level and weigh it: better than any guess.',
  },
  'parts.material.trueDensity_g_per_mL': {
    label: 'True density',
    help: 'Of the solid without air, by gas displacement.',
  },
  'parts.material.compression': {
    label: 'How it answers to a pin',
    help: 'From slugs pressed in a die of about the bore; one slug with a known force is already much.',
  },
  'parts.material.compression.law': {
    label: 'How it answers to a pin',
    help: 'From slugs pressed in a die of about the bore; one slug with a known force is already much.',
  },
  'parts.material.compression.a_frac': {
    label: 'Constant a',
    help: 'Greatest reduction of volume that the fit allows, as a share of the start.',
  },
  'parts.material.compression.b_per_MPa': { label: 'Constant b', help: 'How early the powder yields.' },
  'parts.material.compression.initialDensity_g_per_mL': {
    label: 'Density at the start of the fit',
    help: 'a and b belong to the packing they started from; left out, it is the feed density.',
  },
  'parts.material.compression.slope_pct': {
    label: 'Slope',
    help: 'Fall of the relative volume per tenfold pressure, in % of the solid.',
  },
  'parts.material.compression.intercept_pct': {
    label: 'Intercept',
    help: 'Relative volume at the reference pressure, in % of the solid.',
  },
  'parts.material.compression.referencePressure_MPa': {
    label: 'Reference pressure',
    help: 'To which the intercept belongs.',
  },
  'parts.material.compression.trueDensity_g_per_mL': {
    label: 'True density of the fit',
    help: 'With which the relative volumes were computed.',
  },
  'parts.material.compression.density_g_per_mL': {
    label: 'Density of the slug',
    help: 'Mass over volume of the slug, height taken under load.',
  },
  'parts.material.compression.pressure_MPa': { label: 'Pressure', help: 'With which the slug was pressed.' },
  'parts.material.compression.force_N': {
    label: 'Force',
    help: 'With which the slug was pressed, in a die of the bore.',
  },
  'parts.material.slug': {
    label: 'Slug test',
    help: 'One slug of the diameter of the bore, pressed and handled.',
  },
  'parts.material.slug.isHeld': { label: 'Slug held together', help: 'Whether it stayed whole when it was handled.' },
  'parts.material.slug.force_N': { label: 'Pressed with', help: 'Force on the slug that was handled.' },
  'parts.material.refill_ratio': {
    label: 'Refill',
    help: 'Density of the powder that falls into the hole over a pin, relative to the feed density.',
  },
  'parts.material.captured_ratio': {
    label: 'Captured powder',
    help: 'What a pin takes along beside the hole, as a share of feed density × bore area × bore diameter; left out, none.',
  },
  'parts.material.axialSpringback_pct': {
    label: 'Springback in length',
    help: 'How much longer a slug is after ejection.',
  },
  'parts.material.radialSpringback_pct': {
    label: 'Springback in width',
    help: 'How much wider a slug is after ejection.',
  },
  'parts.material.wallFriction_ratio': { label: 'Wall friction', help: 'Friction coefficient of powder on the bore.' },
  'parts.material.lateralStress_ratio': {
    label: 'Lateral stress',
    help: 'Radial over axial stress in the plug.',
  },
  shells: { label: 'Shells that the dossier allows', help: 'In order of preference, one line a size.' },
  'shells.size': { label: 'Size', help: 'A size of the table, or an own name with a file of own figures.' },
  'shells.record': {
    label: 'Own figures',
    help: 'Relative path of a *.shell.yaml with your own measurement; left out, the figures are trade custom.',
  },
  'shells.lot': { label: 'Lot', help: 'Lot of the shells that were weighed.' },
  'shells.mass_mg': {
    label: 'Empty shells, weighed one by one',
    help: 'Weigh 50 of the lot: their spread blurs every gross weight.',
  },
  filler: {
    label: 'Filler',
    help: 'One that was opened here, an invented example, or another file by its path.',
  },
  validated: {
    label: 'Validated ranges',
    help: 'For this product on this filler; outside them is a change to be approved, not an adjustment.',
  },
  'validated.pinDepth': { label: 'Pin depth', help: 'Below the face of the disc.' },
  'validated.pinDepth.min_mm': { label: 'Pin depth from', help: 'Shallowest depth below the face of the disc.' },
  'validated.pinDepth.max_mm': { label: 'Pin depth to', help: 'Greatest depth below the face of the disc.' },
  'validated.discHeight': { label: 'Disc height', help: 'Of the measuring disc.' },
  'validated.discHeight.min_mm': { label: 'Disc height from', help: 'Lowest measuring disc.' },
  'validated.discHeight.max_mm': { label: 'Disc height to', help: 'Highest measuring disc.' },
  inProcess: { label: 'In-process limits', help: 'The dossier’s limits of the net mass, in % of the target.' },
  'inProcess.sampleCount': { label: 'Capsules per sample', help: 'Left out, it is 20, a guess.' },
  'inProcess.meanAction_pct': {
    label: 'Action limit of the mean',
    help: '± % of the target, for the mean of a sample.',
  },
  'inProcess.individualAction_pct': {
    label: 'Action limit of one',
    help: '± % of the target, for a single capsule.',
  },
  'inProcess.individualAlert_pct': {
    label: 'Alert limit of one',
    help: '± % of the target, before the action limit; left out, it is two thirds of it.',
  },
  route: {
    label: 'Tests that the dossier names',
    help: 'Which test applies is fixed by the dossier, never chosen on the day.',
  },
  'route.test': { label: 'Test', help: 'Of the pharmacopoeia.' },
  'route.use': { label: 'Used for', help: 'Where the dossier uses it.' },
  record: {
    label: 'The machine’s own record',
    help: 'What earlier lots on this machine say of its spread; left out, guesses count.',
  },
  'record.unit_pct': { label: 'Spread between capsules', help: 'Relative standard deviation of the net mass.' },
  'record.betweenTimes_pct': {
    label: 'Spread between sampling times',
    help: 'What means of samples differ by beyond chance; left out, it is 1 %, a guess.',
  },
  'record.setUpSampleCount': {
    label: 'Samples at set-up',
    help: 'On how many samples the set-up is judged; left out, it is 1.',
  },
} as const;
