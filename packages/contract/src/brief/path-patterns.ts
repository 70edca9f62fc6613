/** A relative path, so that a brief and the files it names travel together; forward slashes read alike everywhere. */
const RELATIVE = '(?![/~]|[A-Za-z]:)[^\\\\]+';

/** Pattern of the path of a filler file. */
export const FILLER_PATH = `${RELATIVE}\\.filler\\.yaml`;
/** Pattern of the path of a shell file. */
export const SHELL_PATH = `${RELATIVE}\\.shell\\.yaml`;
