import { scaleComplaint, type LightfastnessScale } from "../permanence/scale-words.ts";
import type { RecordPath } from "./yaml-record.ts";

const SCALES: Readonly<Record<string, LightfastnessScale>> = {
  category: "category",
  blueWool: "blue wool",
};

/** Of a lightfastness given on the wrong scale, where it belongs; nothing for any other field. */
export function scaleHint(path: RecordPath, found: unknown): string | undefined {
  const scale = path.at(-2) === "lightfastness" ? SCALES[String(path.at(-1))] : undefined;
  return scale === undefined || (typeof found !== "string" && typeof found !== "number")
    ? undefined
    : scaleComplaint(String(found), scale)?.hint;
}
