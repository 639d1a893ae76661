import { readReflectance, type Geometry } from "./film-surface.ts";
import {
  dispersed,
  INVENTED_PIGMENTS,
  OIL_ABSORPTION,
  type InventedPigment,
  type PigmentKey,
} from "./invented-pigments.ts";
import {
  INVENTED_PAINTS,
  volumesByPaint,
  volumesByPigment,
  type InventedPaint,
  type PaintKey,
  type Volumes,
} from "./invented-paints.ts";
import { layerReflectance } from "./layer-reflectance.ts";
import { deviates } from "./seeded-noise.ts";

/** One film under the instrument. */
export interface Drawdown {
  readonly paint: PaintKey;
  /** A white let down into, with parts of it to one part of the colour. */
  readonly into?: {
    readonly white: PaintKey;
    readonly parts: number;
    readonly kind: "pigment" | "paint";
  };
  /** Film over a ground; without it a coat so thick that nothing shows through. */
  readonly film?: { readonly thicknessUm: number; readonly ground: "black" | "white" };
  readonly geometry: Geometry;
  /** Factor by which the colour was weighed wrong; 1 for every honest drawdown. */
  readonly misweighed?: number;
}

/** Scatter of the bench, as standard deviations: weighing, film thickness, instrument. */
const RATIO_SCATTER = 0.025;
const THICKNESS_SCATTER = 0.04;
/** Zero and scale move a whole reading; each wavelength adds its own. Together within about .002 + 1 %. */
const ZERO_DRIFT = 0.0004;
const SCALE_DRIFT = 0.004;
const NOISE_FLOOR = 0.0002;
const NOISE_SHARE = 0.002;

const THICK_MM = 3;
/** Reflectance of the card's two halves in contact with the film: bare, the white half then reads .80. */
const GROUND = { black: 0.015, white: 0.912 } as const;

/**
 * Reflectance factors as read, one a wavelength [nm].
 * @param making names the film as it was made, over both grounds: seeds its weighing and thickness.
 * @param reading names the reading of it: seeds the instrument.
 */
export function drawdownReflectance(
  drawdown: Drawdown,
  wavelengthsNm: readonly number[],
  making: string,
  reading: string,
): number[] {
  const bench = deviates(making);
  const slip = Math.exp(RATIO_SCATTER * bench());
  const thickness = Math.exp(THICKNESS_SCATTER * bench());
  const reflectances = trueReflectance(
    drawdown,
    wavelengthsNm,
    slip * (drawdown.misweighed ?? 1),
    thickness,
  );

  const instrument = deviates(reading);
  const zero = ZERO_DRIFT * instrument();
  const scale = 1 + SCALE_DRIFT * instrument();
  return reflectances.map(
    (read) => zero + read * scale + instrument() * (NOISE_FLOOR + NOISE_SHARE * read),
  );
}

/**
 * Reflectance factors of the film as it is meant, one a wavelength [nm]: nothing of bench or instrument in them.
 * @param weighed, drawn factors on the colour's mass and on the film's thickness.
 */
export function trueReflectance(
  drawdown: Drawdown,
  wavelengthsNm: readonly number[],
  weighed = 1,
  drawn = 1,
): number[] {
  const volumes = mixed(drawdown, weighed);
  const thicknessMm = drawdown.film ? (drawdown.film.thicknessUm / 1000) * drawn : THICK_MM;
  const ground = GROUND[drawdown.film?.ground ?? "black"];
  return wavelengthsNm.map((nm) => {
    const { K, S } = coefficients(volumes, nm);
    return readReflectance(layerReflectance(K, S, thicknessMm, ground), drawdown.geometry);
  });
}

/** Reflectance factors of the bare card, which is varnished: its halves are read through a surface like a film's. */
export function groundReflectance(
  ground: keyof typeof GROUND,
  geometry: Geometry,
  wavelengthsNm: readonly number[],
): number[] {
  const instrument = deviates(`card, reading ${ground}`);
  return wavelengthsNm.map(() => {
    const read = readReflectance(GROUND[ground], geometry);
    return read + instrument() * (NOISE_FLOOR + NOISE_SHARE * read);
  });
}

type Part = readonly [paint: PaintKey, volumes: Volumes];

function mixed({ paint, into }: Drawdown, colourParts: number): readonly Part[] {
  const volumes = into?.kind === "pigment" ? volumesByPigment : volumesByPaint;
  const colour: Part = [paint, volumes(paint, into ? colourParts : 1)];
  return into ? [colour, [into.white, volumes(into.white, into.parts)]] : [colour];
}

/** K and S [1/mm] of the film: each pigment by its volume in it. */
function coefficients(parts: readonly Part[], nm: number): { K: number; S: number } {
  const whole = parts.reduce(
    (total, [, { pigments, oil }]) =>
      total + oil + [...pigments.values()].reduce((a, b) => a + b, 0),
    0,
  );
  let [K, S] = [0, 0];
  for (const [paint, { pigments, oil }] of parts) {
    const made: InventedPaint = INVENTED_PAINTS[paint];
    K += (oil / whole) * OIL_ABSORPTION(nm);
    for (const [key, volume] of pigments) {
      const pigment = optics(key, made.dispersed ?? 1);
      const share = volume / whole;
      K += share * pigment.absorption(nm);
      S += share * (1 - (pigment.crowding ?? 0) * share) * pigment.scattering(nm);
    }
  }
  return { K, S };
}

function optics(key: PigmentKey, share: number): InventedPigment {
  return dispersed(INVENTED_PIGMENTS[key], share);
}
