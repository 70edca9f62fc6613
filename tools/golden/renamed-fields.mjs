/** A tolerance whose single fields go by the names of the method; a list where one field of the case has several. */
export function renamedFields({ fields, ...own } = {}, names) {
  if (fields === undefined) return own;
  const renamed = Object.entries(fields).flatMap(([name, value]) =>
    [names[name] ?? name].flat().map((key) => [key, value]),
  );
  return { ...own, fields: Object.fromEntries(renamed) };
}
