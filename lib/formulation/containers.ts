/**
 * Jars that dry pigment is customarily sold in [ml]: metric ones, and four US
 * fluid ounces. What a sheet reckons fills for, beside the sizes of its own tubes.
 *
 * @source practice-formulation
 */
export const CUSTOMARY_JARS_ML: readonly number[] = [100, 118, 250];

/** The mass [g] and the jar [ml] that a sheet compares: the trade's smallest bag of pigment and its commonest jar. */
export const BAG_G = 100;
export const BAG_JAR_ML = 118;
