/** What a painter lays on the palette: one to four colours, a white, and so many parts of each. */
import type { StatementOf } from "../quantities/statement.ts";

export interface MixPart {
  readonly slug: string;
  /** >= 0, by volume or by mass as the mix says. */
  readonly parts: number;
}

export interface Mix {
  readonly by: "volume" | "mass";
  readonly colours: readonly MixPart[];
  /** The white by which K and S are known, with no part of its own where none is mixed in. */
  readonly white: MixPart;
}

/** Its colours, and the white where it has a part of its own. */
export function partsOf({ colours, white }: Mix): readonly MixPart[] {
  return white.parts > 0 ? [...colours, white] : colours;
}

/** Most colours that are mixed at once. */
export const COLOURS_MOST = 4;

/** Why a mix is not predicted. */
export type MixStatement =
  | StatementOf<"nothing-mixed", Readonly<Record<string, never>>>
  | StatementOf<"paint-not-fitted", { readonly paint: string; readonly reason: string }>
  | StatementOf<"paint-not-let-down-in", { readonly paint: string; readonly white: string }>
  | StatementOf<"white-not-read", { readonly white: string }>
  | StatementOf<"paints-read-unlike", { readonly first: string; readonly other: string }>
  | StatementOf<"density-not-recorded", { readonly paints: readonly string[] }>
  | StatementOf<"pigment-share-not-recorded", { readonly paint: string }>;

/** Why a mix is not shown as a film. */
export type FilmStatement =
  | StatementOf<"white-films-not-read", { readonly white: string }>
  | StatementOf<"medium-films-not-read", { readonly medium: string }>
  | StatementOf<"density-not-recorded", { readonly paints: readonly string[] }>
  | StatementOf<"grounds-not-read", Readonly<Record<string, never>>>
  | StatementOf<"film-needs-let-downs", Readonly<Record<string, never>>>;
