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
    densityGPerCm3: 4.1,
    crowding: 0.3,
    absorption: sum(edge(4_000, 0.05, 400, 7), power(0.9, 5)),
    scattering: power(2100, 1.48),
  },
  "lead-carbonate": {
    densityGPerCm3: 6.7,
    crowding: 0.1,
    absorption: sum(edge(30, 0.05, 385, 18), bell(0.25, 430, 50)),
    scattering: power(360, 0.22),
  },
  "zinc-oxide": {
    densityGPerCm3: 5.6,
    crowding: 0.1,
    absorption: edge(3000, 0.04, 382, 6),
    scattering: power(360, 2.2),
  },
  "lamp-black": {
    densityGPerCm3: 1.8,
    absorption: power(26_000, 0.86),
    scattering: power(520, 1.3),
  },
  "furnace-black": {
    densityGPerCm3: 1.85,
    absorption: power(36_000, 1.33),
    scattering: power(330, 4),
  },
  "bone-black": {
    densityGPerCm3: 2.3,
    absorption: power(6_800, 0.52),
    scattering: power(110, 0.5),
  },
  "iron-oxide-black": {
    densityGPerCm3: 4.7,
    absorption: power(11_500, 0.42),
    scattering: power(560, 0.5),
  },
  "spinel-black": {
    densityGPerCm3: 5.4,
    absorption: sum(power(7_600, 0.75), bell(500, 640, 70)),
    scattering: power(330, 1.1),
  },
  "perylene-black": {
    densityGPerCm3: 1.5,
    absorption: sum(
      edge(15_000, 600, 715, 14),
      bell(6_000, 600, 45),
      bell(-7_500, 515, 32),
      bell(3_000, 440, 40),
    ),
    scattering: power(160, 1.2),
  },
  ultramarine: {
    densityGPerCm3: 2.34,
    absorption: sum(
      bell(3_600, 603, 44),
      bell(1_300, 548, 30),
      bell(1_000, 680, 50),
      power(44, 0.3),
      edge(160, 16, 405, 10),
    ),
    scattering: power(52, 0.9),
  },
  "yellow-ochre": {
    densityGPerCm3: 3.4,
    absorption: sum(edge(900, 34, 523, 19), bell(24, 660, 45), power(20, 0.5)),
    scattering: power(165, -0.5),
  },
  "burnt-umber": {
    densityGPerCm3: 3.6,
    absorption: sum(edge(2_800, 480, 560, 32), power(380, 1.4)),
    scattering: power(95, -0.9),
  },
  chalk: {
    densityGPerCm3: 2.7,
    absorption: sum(power(0.14, 2), edge(1.2, 0.02, 390, 40)),
    scattering: power(12.5, 0.4),
  },
  barytes: {
    densityGPerCm3: 4.4,
    absorption: sum(power(0.09, 1.5), edge(0.9, 0.02, 390, 40)),
    scattering: power(9.5, 0.2),
  },
  "cobalt-aluminate": {
    densityGPerCm3: 4.2,
    absorption: sum(
      bell(900, 545, 26),
      bell(1_500, 585, 23),
      bell(1_700, 628, 25),
      edge(220, 30, 400, 14),
      power(30, 0),
    ),
    scattering: power(150, 0.7),
  },
  "iron-blue": {
    densityGPerCm3: 1.85,
    absorption: sum(bell(21_000, 695, 105), bell(2_200, 410, 40), power(900, 0.5)),
    scattering: power(34, 1.5),
  },
  "phthalocyanine-blue": {
    densityGPerCm3: 1.6,
    absorption: sum(
      bell(19_000, 612, 34),
      bell(21_000, 690, 38),
      bell(2_400, 560, 24),
      edge(5_000, 260, 385, 16),
      power(260, 0),
    ),
    scattering: power(60, 1.8),
  },
  "phthalocyanine-green": {
    densityGPerCm3: 2.1,
    absorption: sum(
      bell(14_000, 640, 40),
      bell(9_000, 712, 36),
      bell(900, 575, 22),
      edge(6_000, 150, 448, 15),
      power(90, 0),
    ),
    scattering: power(55, 1.6),
  },
  "hydrated-chromium-oxide": {
    densityGPerCm3: 3.3,
    absorption: sum(bell(1_150, 425, 36), bell(1_500, 605, 43), bell(620, 665, 40), power(9, 1)),
    scattering: power(20, 0.6),
  },
  "chromium-oxide": {
    densityGPerCm3: 5.2,
    absorption: sum(bell(1_700, 442, 40), bell(920, 605, 36), power(95, 0.5)),
    scattering: power(420, 0.4),
  },
  "raw-sienna": {
    densityGPerCm3: 3.15,
    absorption: sum(edge(880, 36, 524, 20), bell(14, 660, 45), power(18, 0.5)),
    scattering: power(62, -0.5),
  },
  "burnt-sienna": {
    densityGPerCm3: 3.55,
    absorption: sum(edge(2_300, 95, 571, 16), power(40, 0.5)),
    scattering: power(80, -0.6),
  },
  "raw-umber": {
    densityGPerCm3: 3.2,
    absorption: sum(edge(1_900, 330, 535, 38), power(240, 0.9)),
    scattering: power(90, -0.5),
  },
  "red-iron-oxide": {
    densityGPerCm3: 4.9,
    absorption: sum(edge(6_800, 230, 570, 11), bell(90, 660, 40)),
    scattering: power(520, -0.4),
  },
  "yellow-iron-oxide": {
    densityGPerCm3: 4.15,
    absorption: sum(edge(3_400, 46, 530, 14), bell(70, 655, 45)),
    scattering: power(470, 0.1),
  },
  "cadmium-zinc-sulphide": {
    densityGPerCm3: 4.4,
    crowding: 0.2,
    absorption: edge(9_000, 4, 509, 6),
    scattering: power(520, 0.4),
  },
  "cadmium-sulphoselenide": {
    densityGPerCm3: 4.6,
    crowding: 0.2,
    absorption: edge(9_000, 5, 592, 6),
    scattering: power(480, 0.3),
  },
  "quinacridone-magenta": {
    densityGPerCm3: 1.5,
    absorption: sum(
      bell(6_500, 530, 30),
      bell(7_500, 567, 17),
      bell(1_500, 490, 26),
      edge(6_000, 90, 425, 25),
      power(60, 0),
    ),
    scattering: power(150, 1),
  },
  "quinacridone-rose": {
    densityGPerCm3: 1.5,
    absorption: sum(
      bell(5_600, 515, 32),
      bell(5_200, 556, 16),
      bell(1_700, 475, 28),
      edge(5_500, 70, 430, 24),
      power(45, 0),
    ),
    scattering: power(160, 1),
  },
  "alizarin-lake": {
    densityGPerCm3: 1.9,
    absorption: sum(bell(1_250, 508, 38), bell(700, 550, 24), edge(1_300, 8, 452, 26), power(5, 0)),
    scattering: power(15, 0.8),
  },
} as const satisfies Record<string, InventedPigment>;

export type PigmentKey = keyof typeof INVENTED_PIGMENTS;

/** The same pigment dispersed better or worse: its tinting strength changes, its scattering hardly. */
export function dispersed(pigment: InventedPigment, share: number): InventedPigment {
  return { ...pigment, absorption: scaled(share, pigment.absorption) };
}
