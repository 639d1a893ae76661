/** Stands in a cell, and for a word, where nothing is known. */
export const NO_VALUE = "\u2013";
