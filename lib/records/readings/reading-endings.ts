import type { ReadingFormat } from "./reading-column.ts";

/** How files of readings may end, by what they then hold. */
export const ENDINGS_BY_FORMAT = {
  CSV: [".csv"],
  "CGATS.17": [".txt", ".cgats", ".it8"],
  CxF3: [".cxf", ".xml"],
} as const satisfies Readonly<Record<ReadingFormat, readonly string[]>>;

/** All of these. */
export const READING_ENDINGS: readonly string[] = Object.values(ENDINGS_BY_FORMAT).flat();

/** The name of a reading file without the ending that a record may give it: "bone-black.csv" is bone-black. */
export function readingStem(name: string): string {
  const ending = READING_ENDINGS.find((one) => name.toLowerCase().endsWith(one)) ?? "";
  return name.slice(0, name.length - ending.length);
}
