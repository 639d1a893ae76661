/** Geometries of a reading, as a page prints them. */
export const GEOMETRY_NAMES: Readonly<Record<string, string>> = {
  "45/0": "45/0",
  "d/8 excluded": "d/8, ohne Glanz",
  "d/8 included": "d/8, mit Glanz",
};
