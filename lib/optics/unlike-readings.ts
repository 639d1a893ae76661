import type { StatementOf } from "../quantities/statement.ts";
import type { RatioKind } from "./fit/drawdown.ts";
import type { Geometry } from "./fit/measurement.ts";

export type SurfacesDiffer = StatementOf<"surfaces-differ", Record<string, never>>;

/** Why two colours are not reckoned together. */
export type UnlikeReadings =
  | SurfacesDiffer
  | StatementOf<"whites-differ", { sample: string; reference: string }>
  | StatementOf<"ratio-kinds-differ", { sample: RatioKind; reference: RatioKind }>
  | StatementOf<"geometries-differ", { sample: Geometry; reference: Geometry }>;
