/** How often figures of measured oil paints lie within their printed ±: what the README and the page Methods state. */

export interface MeasuredCoverage {
  readonly what:
    | "L*, a* and b* at another place of a drawdown, each"
    | "L*, a* and b* of a let-down, each"
    | "mass ratio at a lightness"
    | "strength beside another colour"
    | "contrast ratio of a mixture's film"
    | "contrast ratio of a film that hides";
  readonly count: number;
  /** How many lie within the printed ±, and within 1.645 times as much. */
  readonly inside68: number;
  readonly inside90: number;
}

/**
 * Of let-downs in zinc white that were left out, with films, and of drawdowns that hid their chart; a test
 * holds each figure against the script that works it out.
 * @source reconstructed-oil-paints
 */
export const MEASURED_COVERAGE: readonly MeasuredCoverage[] = [
  {
    what: "L*, a* and b* at another place of a drawdown, each",
    count: 66,
    inside68: 48,
    inside90: 60,
  },
  { what: "L*, a* and b* of a let-down, each", count: 96, inside68: 80, inside90: 88 },
  { what: "mass ratio at a lightness", count: 17, inside68: 13, inside90: 17 },
  { what: "strength beside another colour", count: 47, inside68: 41, inside90: 47 },
  { what: "contrast ratio of a mixture's film", count: 32, inside68: 22, inside90: 29 },
  { what: "contrast ratio of a film that hides", count: 22, inside68: 18, inside90: 20 },
];
