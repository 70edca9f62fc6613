/** The examples that come with the program; `src` and `dist` are equally deep. */
export const EXAMPLES_FOLDER = new URL('../../../../examples/', import.meta.url);
