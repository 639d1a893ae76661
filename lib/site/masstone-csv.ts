import { stringify } from "csv-stringify/sync";
import { wavelengthsNm } from "../quantities/spectrum.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { DataFile } from "./site.ts";
import { at } from "../quantities/at.ts";

/** The masstone as read, in the form that records take readings in; nothing for a colour without a spectrum. */
export function masstoneCsv({ slug, notations: { masstone } }: Sheet): DataFile[] {
  if (masstone?.curve === undefined) return [];
  const { grid, values } = masstone.curve;
  const rows = wavelengthsNm(grid).map((nm, i) => [nm, Number(at(values, i).toPrecision(6))]);
  return [{ path: `colours/${slug}/masstone.csv`, text: stringify([["nm", "masstone"], ...rows]) }];
}
