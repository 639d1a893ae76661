import type { LabUnderStatement } from "./lab-under.ts";
import type { LamplightStatement } from "./lamplight.ts";
import type { MetamerismStatement } from "./metamerism.ts";
import type { MunsellStatement } from "./munsell.ts";

/** Everything that colorimetry says of a colour. */
export type ColorimetryStatement =
  LabUnderStatement | LamplightStatement | MetamerismStatement | MunsellStatement;
