let number = 0;

/** A breach of one line in a file of its own in `folder`, to be reported under `rule`. */
export function breach(rule, folder, text) {
  number += 1;
  return { rule, file: `${folder}/seeded-${number}.ts`, text };
}
