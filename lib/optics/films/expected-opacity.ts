/**
 * How far a paint of a pigment hides what is under it, as handbooks and painters
 * expect of it before a film is drawn; `expected-opacity.csv` says of which.
 */
export const EXPECTED_OPACITIES = [
  "transparent",
  "semi-transparent",
  "semi-opaque",
  "opaque",
] as const;
