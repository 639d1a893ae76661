import type { Figure } from "../quantities/figure.ts";
import type { Sheet } from "./sheet.ts";

/**
 * Where a figure of a sheet stands, as the declarations have it: `tints.${string}.atL.50.b`. A path that is written
 * where no sheet has a figure does not compile.
 */
export type SheetPath = Within<Sheet>;

/** What follows on a path: `PathBelow<"drying">` has "class". */
export type PathBelow<P extends string, Path = SheetPath> = Path extends `${P}.${infer Rest}`
  ? Rest
  : never;

type Within<T> = T extends readonly (infer M)[]
  ? At<string, M>
  : T extends object
    ? { [K in keyof T & string]: At<K, NonNullable<T[K]>> }[keyof T & string]
    : never;

type At<K extends string, T> = [T] extends [Figure] ? K : `${K}.${Within<T>}`;
