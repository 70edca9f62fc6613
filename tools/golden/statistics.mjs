/**
 * Which method computes a case of a statistics set: by the set's name a function from the case to `{ method, inputs, expected }`,
 * or undefined for a case that has no method. Sets without a line here are left out. Empty until room `statistics` has entries.
 */
export const SETS = new Map();
