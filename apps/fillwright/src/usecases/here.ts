/** The only site by now; it stands in every key, so that another one can be added. */
export const HERE = 'here';
