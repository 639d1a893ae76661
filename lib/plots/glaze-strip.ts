import { domainError } from "../diagnostics/diagnostic.ts";
import type { ScreenColour } from "./screen-colour.ts";
import type { ShownStanding } from "./standing-mark.ts";
import { writtenSwatchStrip, type SwatchStrip } from "./swatch-strip.ts";

export interface GlazeFilm {
  /** Wet or dry as the axis label says, >= 0; 0 is the bare ground. Orders the strip. */
  readonly filmUm: number;
  readonly label: string;
  readonly colour: ScreenColour | undefined;
  readonly standing: ShownStanding;
}

export interface GlazeStrip extends SwatchStrip {
  readonly films: readonly GlazeFilm[];
}

/**
 * One colour in thicker and thicker films over one ground.
 * @throws RangeError for no films, or a film that is negative or not a number.
 */
export function glazeStrip(params: GlazeStrip): string {
  for (const { filmUm } of params.films) {
    if (!(filmUm >= 0 && filmUm < Infinity))
      throw domainError("film thickness", filmUm, "0 <= film < Infinity um");
  }
  const films = params.films.toSorted((one, other) => one.filmUm - other.filmUm);
  return writtenSwatchStrip(
    "glaze-strip",
    params,
    films.map(({ label, colour, standing }) => ({ label, colour, standing, lines: [label] })),
    { width: [30, 52], height: 56 },
  );
}
