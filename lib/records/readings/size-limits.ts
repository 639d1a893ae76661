/** Longest text of a reading file, in characters; a chart of two thousand patches has about two million. */
export const LONGEST_TEXT = 8 * 1024 * 1024;

/** Most values in one file: a thousand readings at every nanometre from 380 to 780. */
export const MOST_CELLS = 500_000;
