/** What the server answers when it cannot do what was asked: what it is in a few words, and what to do about it. */
export const SERVER_PROBLEMS = {
  'invalid-input': { title: 'The input is not valid', todo: 'Correct the fields that are named.' },
  'unreadable-request': {
    title: 'The request cannot be read',
    todo: 'Send JSON in UTF-8 that is whole, to an address without broken escapes.',
  },
  'foreign-origin': {
    title: 'The request comes from a page of another site',
    todo: 'Open the workbench by its own address and repeat it there.',
  },
  'unknown-address': { title: 'There is nothing at this address', todo: 'Compare it with docs/openapi.json.' },
  'unknown-document': { title: 'There is no such document or version', todo: 'Look at the list of documents.' },
  'unknown-example': { title: 'There is no such example', todo: 'Look at the list of examples.' },
  'newer-version': {
    title: 'Somebody else kept a newer version',
    todo: 'Nothing was overwritten; compare both texts and choose.',
  },
  'body-too-large': { title: 'The document is too large', todo: 'Shorten it.' },
  'media-type': { title: 'The body is not JSON', todo: 'Send it as application/json.' },
  'foreign-host': {
    title: 'The server is not known by this name',
    todo: 'Use its number or localhost, or start it with the name in FILLWRIGHT_NAMES.',
  },
  'not-in-order': {
    title: 'The version cannot be kept as it was sent',
    todo: 'Correct what is named, or keep it as a draft.',
  },
  'reason-missing': { title: 'A saved version is superseded without a reason', todo: 'Say in a few words why.' },
  'too-many-requests': { title: 'Too many requests', todo: 'Wait a minute; nothing that was kept is lost.' },
  'internal-error': {
    title: 'The server ran into something unexpected',
    todo: 'What was kept before is safe; the log of the server says more under this id.',
  },
  'app-not-built': { title: 'The pages are not built', todo: 'Run "npm run setup" and load this again.' },
  'store-trouble': {
    title: 'The store does not take it at the moment',
    todo: 'What was kept before is safe; look at what the server prints, then try again.',
  },
} as const;

/** What `fillwright serve` says on the terminal. */
export const SERVE_WORDS = {
  ready: (url: string): string => `Fillwright is ready: ${url} (Ctrl+C ends it)`,
  demoAdded: 'The store was empty: the demo product Alder 200 was added.',
  notPort: ({ from, text }: { from: string; text: string }): string =>
    `${from} is ${JSON.stringify(text)}, which is no port; nothing was started. Give a whole number from 0 to 65535, 0 for any free one.`,
  notHost: ({ from, text }: { from: string; text: string }): string =>
    `${from} is ${JSON.stringify(text)}, which is no address; nothing was started. Give the one to listen on, for example 127.0.0.1.`,
  portInUse: (port: number): string =>
    `Port ${port} is in use by another program, maybe by a Fillwright that is still running; what is kept stays as it is. End that one, or choose another port with --port or PORT.`,
  portNotAllowed: (port: number): string =>
    `Port ${port} may not be used by this person; choose one from 1024 with --port or PORT.`,
  noSuchAddress: (host: string): string =>
    `This machine has no address ${host}; give another with --host or HOST, for example 127.0.0.1.`,
  notListening: (why: string): string => `The server cannot listen: ${why}.`,
  internalError: (id: string, why: string): string => `internal error ${id}: ${why}`,
} as const;

/** What keeps a version from being saved, and who saves without being a person. */
export const SAVE_WORDS = {
  reasonMissing: 'reason is missing: the newest saved version is superseded.',
  demo: 'Fillwright (demo product)',
} as const;
