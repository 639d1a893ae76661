import { bell, edge, power, scaled, sum, type Shape } from "./spectral-shapes.ts";

/** Optics of a dry pigment: absorption K and scattering S [1/mm] in a film that were all pigment. Invented. */
export interface InventedPigment {
  readonly densityGPerCm3: number;
  readonly absorption: Shape;
  readonly scattering: Shape;
  /** Share of its scattering that a pigment loses to its own neighbours, by volume fraction: high for rutile. */
  readonly crowding?: number;
}

/** Yellowness of the oil [1/mm], by volume of oil. */
export const OIL_ABSORPTION: Shape = (nm) => 0.25 * Math.exp((400 - nm) / 40);

/**
 * Blacks and whites follow one rule: with K of the black as lambda^-p and S of the white as
 * lambda^-q, a tint turns bluer as q - p grows. Rutile q 1.4, zinc 2.2, basic lead carbonate
 * .2; lamp black p 1, furnace black 1.35, bone and iron oxide black .5, a little moved so that
 * each black keeps a character of its own. A fine carbon scatters steeply (lambda^-4), hence
 * the bluer masstone of furnace black beside its browner tint.
 */
export const INVENTED_PIGMENTS = {
  "titanium-dioxide": {
    densityGPerCm3: 4.1, crowding: 0.3,
    absorption: edge(4000, 0.05, 400, 7), scattering: power(2100, 1.48),
  },
  "lead-carbonate": {
    densityGPerCm3: 6.7, crowding: 0.1,
    absorption: sum(edge(30, 0.05, 385, 18), bell(0.25, 430, 50)), scattering: power(360, 0.22),
  },
  "zinc-oxide": {
    densityGPerCm3: 5.6, crowding: 0.1,
    absorption: edge(3000, 0.04, 382, 6), scattering: power(360, 2.2),
  },
  "lamp-black": { densityGPerCm3: 1.8, absorption: power(26_000, 0.86), scattering: power(520, 1.3) },
  "furnace-black": { densityGPerCm3: 1.85, absorption: power(36_000, 1.33), scattering: power(330, 4) },
  "bone-black": { densityGPerCm3: 2.3, absorption: power(6_800, 0.52), scattering: power(110, 0.5) },
  "iron-oxide-black": { densityGPerCm3: 4.7, absorption: power(11_500, 0.42), scattering: power(560, 0.5) },
  "spinel-black": {
    densityGPerCm3: 5.4, absorption: sum(power(7_600, 0.75), bell(500, 640, 70)), scattering: power(330, 1.1),
  },
  "perylene-black": {
    densityGPerCm3: 1.5,
    absorption: sum(edge(15_000, 600, 715, 14), bell(6_000, 600, 45), bell(-7_500, 515, 32), bell(3_000, 440, 40)),
    scattering: power(160, 1.2),
  },
  "ultramarine": {
    densityGPerCm3: 2.34,
    absorption: sum(bell(3_600, 603, 44), bell(1_300, 548, 30), bell(1_000, 680, 50), power(44, 0.3), edge(160, 16, 405, 10)),
    scattering: power(52, 0.9),
  },
  "yellow-ochre": {
    densityGPerCm3: 3.4,
    absorption: sum(edge(900, 34, 523, 19), bell(24, 660, 45), power(20, 0.5)), scattering: power(165, -0.5),
  },
  "burnt-umber": {
    densityGPerCm3: 3.6,
    absorption: sum(edge(2_800, 480, 560, 32), power(380, 1.4)), scattering: power(95, -0.9),
  },
} as const satisfies Record<string, InventedPigment>;

export type PigmentKey = keyof typeof INVENTED_PIGMENTS;

/** The same pigment dispersed better or worse: its tinting strength changes, its scattering hardly. */
export function dispersed(pigment: InventedPigment, share: number): InventedPigment {
  return { ...pigment, absorption: scaled(share, pigment.absorption) };
}
