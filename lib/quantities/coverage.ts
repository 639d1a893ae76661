/** Standard deviations either side of the middle within which 90 % of a normal distribution lies, where 68 % lie within one [1]. */
export const NINETY_PERCENT = 1.645;
