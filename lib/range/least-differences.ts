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

/** Standard uncertainties of a difference, in quadrature, that it must pass: about 95 % of chance lies within. */
export const COVERAGE = 2;
