/** One of the two documents of a product, as a person names it. */
export type ProductThing = 'brief' | 'design';
/** What can be kept: those, a filler or shell file, and a sheet of weights. */
export type KeptThing = ProductThing | 'file' | 'weights';

const THING = { brief: 'the brief', design: 'the set-up', file: 'the file', weights: 'the weights' } as const;
const OTHER = { brief: 'Brief', design: 'Set-up', file: 'File', weights: 'Weights' } as const;

/** What becomes of what is typed and set: on the server, in this browser, in two versions. */
export const KEEPING_WORDS = {
  label: 'What is kept',
  kept: (version: number): string => (version === 0 ? 'Nothing kept yet' : `Kept as version ${version}`),
  pending: (version: number): string =>
    version === 0 ? 'Not kept yet' : `Changed since version ${version}, kept in a moment`,
  pendingNowhere: (thing: KeptThing): string =>
    `This browser keeps nothing: stay on this page until ${THING[thing]} is kept`,
  saving: 'Saving …',
  offline: 'The server does not answer: kept in this browser, sent as soon as it does',
  offlineNowhere: (thing: KeptThing): string =>
    `The server does not answer, and this browser keeps nothing: stay on this page until ${THING[thing]} is kept, or save it as a file`,
  trouble: (thing: KeptThing, why: string): string =>
    `${why} Until then ${THING[thing]} is kept in this browser and sent again by itself.`,
  troubleNowhere: (thing: KeptThing, why: string): string =>
    `${why} This browser keeps nothing either: stay on this page until ${THING[thing]} is kept, or save it as a file.`,
  refused: (thing: KeptThing, why: string): string =>
    `The server does not take ${THING[thing]}. ${why} It is kept in this browser; change it, and it is sent again.`,
  refusedNowhere: (thing: KeptThing, why: string): string =>
    `The server does not take ${THING[thing]}. ${why} This browser keeps nothing either: change it before you leave this page.`,
  /** Before a fault that is of one thing only. */
  about: (thing: KeptThing, sentence: string): string => `${OTHER[thing]}: ${sentence}`,
  answered: (status: number): string => `The server answered ${status} and no more.`,
  more: (count: number): string => `And ${count} more.`,
  conflictShort: 'Somebody else kept a newer version: choose above',
  conflict: {
    title: {
      brief: (version: number, by: string): string =>
        `Version ${version} was kept by ${by} while you were changing the brief`,
      design: (version: number, by: string): string =>
        `Version ${version} of the set-up was kept by ${by} while you were moving the levers`,
      file: (version: number, by: string): string =>
        `Version ${version} was kept by ${by} while you were changing the file`,
      weights: (version: number, by: string): string =>
        `Version ${version} was kept by ${by} while you were changing the weights`,
    },
    body: {
      brief: 'Nothing is lost: both texts are here. What you do not choose stays in the history or in undo.',
      file: 'Nothing is lost: both texts are here. What you do not choose stays in the history.',
      weights: 'Nothing is lost: both sheets are here. What you do not choose stays in the history.',
      design: 'Nothing is lost: both set-ups are here. What you do not choose stays in the store or in undo.',
    },
    theirs: (version: number): string => `Version ${version}`,
    yours: 'Yours',
    takeMine: 'Keep mine, as the next version',
    takeTheirs: (version: number): string => `Take version ${version}; mine stays in undo`,
  },
  /** The design was computed from another version of a file than the page. */
  olderFile: {
    is: (of: { file: string; older: number | undefined; version: number }): string =>
      `This design rests on ${of.file} ${of.older === undefined ? 'of the examples' : `version ${of.older}`}; the newest is version ${of.version}, and this page computes with it.`,
    keep: (of: { older: number | undefined }): string =>
      of.older === undefined
        ? 'To keep the example, give the file another name in the brief.'
        : `To keep version ${of.older}, take it back from the history of the file:`,
    toFile: (file: string): string => file,
    take: 'Rest on the newest, as a new draft',
  },
  standing: {
    size: (size: string): string => `shell size ${size}`,
    part: (slot: string, number: string): string => `${slot} ${number}`,
    depth: (pin: string, depth: string): string => `${pin}: ${depth} below the face of the disc`,
    flush: (pin: string): string => `${pin}: flush with the face of the disc`,
    file: ({ file, version }: { file: string; version?: number | undefined }): string =>
      `computed from ${file}${version === undefined ? ' of the examples' : `, version ${version}`}`,
  },
} as const;

/** Why nothing was computed. */
export const COMPUTING_WORDS = {
  broken:
    'The computation broke off; nothing you typed is lost. Load the page again, and tell whoever keeps the program if it comes back.',
  notLoaded:
    'A part of the program could not be loaded from the server; nothing you typed is lost. Load the page again when the server answers.',
  nothingOpen: 'No product is open.',
} as const;
