/**
 * Internal reflectance of a paint film over its ground, by doubling: the light that a
 * layer too thin for a second scattering turns back and lets through is known from K
 * and S alone; two such layers make one of twice the thickness, and so on. No closed
 * form of the two-flux equations is used, so that these readings and the fits made of
 * them come from two paths.
 *
 * @param absorption K of the film [1/mm], >= 0.
 * @param scattering S of the film [1/mm], >= 0.
 * @param thicknessMm film thickness [mm], > 0.
 * @param ground reflectance of the ground in contact with the film [1], 0-1.
 * @returns reflectance without the film's own surface [1], 0-1.
 */
export function layerReflectance(
  absorption: number,
  scattering: number,
  thicknessMm: number,
  ground: number,
): number {
  const doublings = Math.max(
    0,
    Math.ceil(Math.log2(((absorption + scattering) * thicknessMm) / THIN)),
  );
  const thin = thicknessMm / 2 ** doublings;
  // Second order in the thickness of the starting layer.
  const [k, s] = [absorption * thin, scattering * thin];
  let back = s - s * (k + s);
  let through = 1 - (k + s) + ((k + s) ** 2 + s ** 2) / 2;
  for (let i = 0; i < doublings; i++) {
    const echoes = 1 - back * back;
    [back, through] = [back + (through * through * back) / echoes, (through * through) / echoes];
  }
  return back + (through * through * ground) / (1 - back * ground);
}

/** Optical thickness (K + S) X of the starting layer. */
const THIN = 1e-5;
