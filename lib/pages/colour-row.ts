import type { CellView, ColourCardView, Markup, TileView } from "../present/views.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import type { MunsellPlace } from "./munsell-place.ts";

/**
 * What lists, walls and tables of the whole range print of a colour, and go by where they put it in
 * order. A page of many colours reads these and loads none of their sheets; each is told by what it
 * prints, so that a figure which moves in a digit that nobody prints fills no such page again.
 */
export interface ColourRow {
  /** Its card in a grid, but for the way to its sheet. */
  readonly card: Omit<ColourCardView, "href">;
  /** The swatch of that card with its tint in a white, by the white's slug. */
  readonly swatchIn: Readonly<Record<string, Markup>>;
  /** On the wall: masstone over the tint that tells most. */
  readonly tile: Pick<TileView, "colours" | "missing" | "note">;
  /** Its masstone as it is set beside others'. */
  readonly colour: ScreenColour | undefined;
  /** That masstone in a cell of a table. */
  readonly swatch: Markup;
  readonly munsell: MunsellPlace | undefined;
  /** Munsell value in tenths; -1 of what was not read. */
  readonly lightness: number;
  /** Whether that masstone rests on a reading of the workshop's own. */
  readonly isMeasured: boolean;
  readonly isLetDown: boolean;
  /** A black or grey that was let down. */
  readonly isNearNeutral: boolean;
  readonly filters: RowFilters;
  readonly keys: OrderKeys;
  /** Cells of the tables in most orders, behind its name. */
  readonly cells: readonly CellView[];
  /** Oil to a mass of pigment and to a volume of it. */
  readonly oil: readonly CellView[];
  /** Strength by volume and by mass, and parts of the white of that name. */
  readonly strength: {
    readonly beside: readonly CellView[];
    readonly parts: CellView;
    readonly white?: string;
  };
}

/** Filters that it meets, and the whites that it was let down in. */
export interface RowFilters {
  readonly tags: readonly string[];
  readonly whites: readonly (readonly [slug: string, name: string])[];
}

/** Numbers that it is put in order by, and words that stand over it there; of what is not known none. */
export interface OrderKeys {
  readonly value: number | undefined;
  /** Hundred-step hue; -1 for a neutral, and for one so near it that its hue is what it gives least. */
  readonly hue: number | undefined;
  readonly dryingRank: number | undefined;
  readonly drying: string;
  readonly permanenceRank: number | undefined;
  readonly permanence: string;
  /** To a mass of pigment, and to a volume of it. */
  readonly oilByMass: number | undefined;
  readonly oilByVolume: number | undefined;
  readonly strength: number | undefined;
}
