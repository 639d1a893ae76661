import type { StatementOf } from "../quantities/statement.ts";
import type { RatioKind } from "./fit/drawdown.ts";
import type { Geometry } from "./fit/measurement.ts";

/** Readings on different wavelengths: of which let-down or white, where one is to blame. */
export type GridsDiffer = StatementOf<
  "grids-differ",
  { readonly white?: string } | { readonly tint: string; readonly white: string }
>;

export type SurfacesDiffer = StatementOf<"surfaces-differ", Record<string, never>>;

/** Why two colours are not reckoned together. */
export type UnlikeReadings =
  | GridsDiffer
  | SurfacesDiffer
  | StatementOf<"whites-differ", { sample: string; reference: string }>
  | StatementOf<"ratio-kinds-differ", { sample: RatioKind; reference: RatioKind }>
  | StatementOf<"geometries-differ", { sample: Geometry; reference: Geometry }>;
