/** The frame of the workbench: thread, title, what goes wrong around a page. */
export const SHELL_WORDS = {
  title: 'Fillwright',
  person: 'Your name',
  personHelp: 'kept with every version you make in this browser, unsigned',
  noSuchPage: 'There is no page at this address.',
  toStart: 'To all products',
  noSuchProduct: (id: string): string =>
    `No product "${id}" is in this store. It may be in another one, or its address is mistyped.`,
  serverSilent: 'The server does not answer. Start it again (npm start); what was typed is kept in this browser.',
} as const;

/** The product as one sentence with ten blanks. */
export const THREAD_WORDS = {
  label: 'The product so far',
  noName: 'No name yet',
  empty: 'not yet',
  size: (size: string): string => `size ${size}`,
  guesses: (label: string, count: number): string => `${label}, ${count} ${count === 1 ? 'guess' : 'guesses'}`,
  blanks: {
    brief: { lead: 'must hold', label: 'Brief' },
    materials: { lead: 'of', label: 'Materials' },
    shell: { lead: 'in', label: 'Shell' },
    fill: { lead: 'by', label: 'Fill' },
    trial: { lead: 'tried', label: 'Trial' },
    plan: { lead: 'watched', label: 'Control plan' },
    run: { lead: 'run', label: 'Run' },
    inspection: { lead: 'inspected', label: 'Inspection' },
    release: { lead: 'released', label: 'Release' },
    campaign: { lead: 'planned', label: 'Campaign' },
  },
} as const;
