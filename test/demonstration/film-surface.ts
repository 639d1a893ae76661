/** How the invented instrument looks at a film. */
export type Geometry = "d/8 excluded" | "d/8 included" | "45/0";

/** Shares of light turned back at the surface, from outside and from inside: of this workshop's films, and no default of the product. */
const OUTER = 0.037;
const INNER = 0.52;

/** Share of the surface light that a gloss trap lets by. */
const TRAP_LEAK = 0.02;

/** Refractive index of the film, for the light that comes in at 45 degrees. */
const INDEX_45 = 1.49;

/** Reflectance factor as the instrument reads it, from the reflectance inside the film (Saunderson's sum). */
export function readReflectance(inside: number, geometry: Geometry): number {
  if (geometry === "45/0") {
    const [in45, out0] = [1 - fresnel(INDEX_45, Math.PI / 4), 1 - fresnel(INDEX_45, 0)];
    return (((in45 * out0) / INDEX_45 ** 2) * inside) / (1 - 0.588 * inside);
  }
  const below = ((1 - OUTER) * (1 - INNER) * inside) / (1 - INNER * inside);
  return below + OUTER * (geometry === "d/8 included" ? 1 : TRAP_LEAK);
}

/** Reflectance of the surface for unpolarised light from air at an angle [rad]. */
function fresnel(index: number, angle: number): number {
  const inside = Math.asin(Math.sin(angle) / index);
  const s =
    (Math.cos(angle) - index * Math.cos(inside)) / (Math.cos(angle) + index * Math.cos(inside));
  const p =
    (index * Math.cos(angle) - Math.cos(inside)) / (index * Math.cos(angle) + Math.cos(inside));
  return (s * s + p * p) / 2;
}
