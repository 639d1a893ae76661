import { INVENTED_PIGMENTS, type PigmentKey } from "./invented-pigments.ts";

/** What is in a tube. Grams; the paint is pigment and oil only. */
export interface InventedPaint {
  readonly pigments: Partial<Record<PigmentKey, number>>;
  readonly oilGPer100g: number;
  /** Share of the pigments' tinting strength that this dispersion brings out [1]; 1 when left out. */
  readonly dispersed?: number;
}

const OIL_DENSITY_G_PER_CM3 = 0.93;

export const INVENTED_PAINTS = {
  "titanium-white": { pigments: { "titanium-dioxide": 1 }, oilGPer100g: 26 },
  "lead-white": { pigments: { "lead-carbonate": 1 }, oilGPer100g: 13 },
  "zinc-white": { pigments: { "zinc-oxide": 1 }, oilGPer100g: 21 },
  "lamp-black": { pigments: { "lamp-black": 1 }, oilGPer100g: 99, dispersed: 0.82 },
  "furnace-black": { pigments: { "furnace-black": 1 }, oilGPer100g: 165, dispersed: 0.9 },
  "bone-black": { pigments: { "bone-black": 1 }, oilGPer100g: 78 },
  "iron-oxide-black": { pigments: { "iron-oxide-black": 1 }, oilGPer100g: 33 },
  "spinel-black": { pigments: { "spinel-black": 1 }, oilGPer100g: 27 },
  "perylene-black": { pigments: { "perylene-black": 1 }, oilGPer100g: 88 },
  "ultramarine-blue": { pigments: { ultramarine: 1 }, oilGPer100g: 42 },
  "yellow-ochre": { pigments: { "yellow-ochre": 1 }, oilGPer100g: 58 },
  "burnt-umber": { pigments: { "burnt-umber": 1 }, oilGPer100g: 72 },
  "titanium-zinc-white": { pigments: { "titanium-dioxide": 6, "zinc-oxide": 4 }, oilGPer100g: 24 },
  "chalk-medium": { pigments: { chalk: 1 }, oilGPer100g: 27 },
  "barytes-medium": { pigments: { barytes: 1 }, oilGPer100g: 15 },
  "lamp-black-milled": { pigments: { "lamp-black": 1 }, oilGPer100g: 92 },
  "umber-ultramarine-black": { pigments: { ultramarine: 7, "burnt-umber": 13 }, oilGPer100g: 58 },
  "viridian-quinacridone-black": {
    pigments: { "hydrated-chromium-oxide": 9, "quinacridone-rose": 1 },
    oilGPer100g: 72,
  },
  "cobalt-blue": { pigments: { "cobalt-aluminate": 1 }, oilGPer100g: 46 },
  "prussian-blue": { pigments: { "iron-blue": 1 }, oilGPer100g: 82 },
  "phthalocyanine-blue": { pigments: { "phthalocyanine-blue": 1 }, oilGPer100g: 74 },
  "phthalocyanine-green": { pigments: { "phthalocyanine-green": 1 }, oilGPer100g: 58 },
  viridian: { pigments: { "hydrated-chromium-oxide": 1 }, oilGPer100g: 68 },
  "chromium-oxide-green": { pigments: { "chromium-oxide": 1 }, oilGPer100g: 21 },
  "raw-sienna": { pigments: { "raw-sienna": 1 }, oilGPer100g: 76 },
  "burnt-sienna": { pigments: { "burnt-sienna": 1 }, oilGPer100g: 70 },
  "raw-umber": { pigments: { "raw-umber": 1 }, oilGPer100g: 70 },
  "red-iron-oxide": { pigments: { "red-iron-oxide": 1 }, oilGPer100g: 28 },
  "yellow-iron-oxide": { pigments: { "yellow-iron-oxide": 1 }, oilGPer100g: 54 },
  "cadmium-yellow": { pigments: { "cadmium-zinc-sulphide": 1 }, oilGPer100g: 27 },
  "cadmium-red": { pigments: { "cadmium-sulphoselenide": 1 }, oilGPer100g: 26 },
  "quinacridone-magenta": { pigments: { "quinacridone-magenta": 1 }, oilGPer100g: 80 },
  "quinacridone-rose": { pigments: { "quinacridone-rose": 1 }, oilGPer100g: 76 },
  "alizarin-crimson": { pigments: { "alizarin-lake": 1 }, oilGPer100g: 88 },
} as const satisfies Record<string, InventedPaint>;

export type PaintKey = keyof typeof INVENTED_PAINTS;

/** Volumes [cm3] in an amount of paint: each pigment and the oil. */
export interface Volumes {
  readonly pigments: ReadonlyMap<PigmentKey, number>;
  readonly oil: number;
}

/** Volumes in as much paint as holds `pigmentG` grams of dry pigment. */
export function volumesByPigment(key: PaintKey, pigmentG: number): Volumes {
  const paint: InventedPaint = INVENTED_PAINTS[key];
  const parts = Object.entries(paint.pigments) as [PigmentKey, number][];
  const whole = parts.reduce((total, [, part]) => total + part, 0);
  return {
    pigments: new Map(
      parts.map(([pigment, part]) => [
        pigment,
        (pigmentG * part) / whole / INVENTED_PIGMENTS[pigment].densityGPerCm3,
      ]),
    ),
    oil: (pigmentG * paint.oilGPer100g) / 100 / OIL_DENSITY_G_PER_CM3,
  };
}

/** Volumes in `paintG` grams of the paint. */
export function volumesByPaint(key: PaintKey, paintG: number): Volumes {
  return volumesByPigment(key, paintG / (1 + INVENTED_PAINTS[key].oilGPer100g / 100));
}
