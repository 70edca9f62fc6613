/** Columns of table `document` in the order of the schema, without the text and with it. */
export const HEAD_COLUMNS = 'kind, id, version, status, sha256, previous, by, at, reason';
export const VERSION_COLUMNS = `${HEAD_COLUMNS}, text`;
