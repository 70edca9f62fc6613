/** Rows of a matrix: at least one row and one column, all rows of one length. */
export type Matrix = readonly (readonly number[])[];
