/**
 * What counts as a difference where a figure gives no uncertainty, or a smaller one than this: what two batches of
 * one paint differ by, or what an eye sees. Common practice, no source.
 */
export const LEAST_DIFFERENCES = {
  /** Distance in L*a*b* between masstones, or in a*b* between tints of one lightness: about what is seen side by side. */
  colour: 1,
  /** Share by which a rub-out, a batch's oil or a strength comes out otherwise the next time [1]. */
  share: 0.1,
  /** Touch dry is looked for once a day [d]. */
  days: 1,
} as const;

/**
 * Standard uncertainties within which 95 % lie: of one number 1.960 (normal distribution), of a distance between two
 * points of the plane 2.448 and of space 2.795, of an axis each (roots of chi-squared at .95 with 1, 2 and 3 degrees of freedom).
 */
export const COVERAGE = { number: 1.96, plane: 2.448, space: 2.795 } as const;
