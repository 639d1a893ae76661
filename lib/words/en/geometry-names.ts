/** Geometries of a reading, as a page prints them. */
export const GEOMETRY_WORDS: Readonly<Record<string, string>> = {
  "45/0": "45/0",
  "d/8 excluded": "d/8, shine excluded",
  "d/8 included": "d/8, shine included",
};
