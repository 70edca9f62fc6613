/**
 * The flag of an input: its name in kebab case, its unit spelt as in the key.
 *
 * @param key - for example `bodyLength_mm`
 * @returns for example `body-length_mm`
 */
export function flagOf(key: string): string {
  const [name = '', ...unit] = key.split('_');
  return [name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), ...unit].join('_');
}
