import type { TracedLots } from "../claims/traced-lots.ts";
import type { Lot, Records } from "../records/records.ts";
import { counted } from "./told.ts";

/** Lots that are called back together, as lines: which tubes, and what else holds what they were made with. */
export function lotsText(
  { kind, name, lots, madeWith }: TracedLots,
  records: Pick<Records, "colours">,
): string {
  const tubes = lots
    .flatMap(({ record }) => record.tubes ?? [])
    .reduce((sum, { count }) => sum + count, 0);
  return [
    `${kind} ${name}: ${counted(lots.length, "lot")}, ${tubes === 0 ? "no tubes" : counted(tubes, "tube")}`,
    ...lots.map((lot) => `  ${lotLine(lot, records)}`),
    ...(madeWith.length === 0 ? [] : ["  made with"]),
    ...madeWith.map(
      ({ pigment, name: own, alsoIn }) =>
        `    ${pigment} of the supplier's lot ${own}${alsoIn.length === 0 ? "" : `, also in ${alsoIn.join(", ")}`}`,
    ),
  ].join("\n");
}

function lotLine({ record }: Lot, { colours }: Pick<Records, "colours">): string {
  const { number, colour, date, planned, pigments, tubes = [] } = record;
  return [
    `${number}: ${colours.get(colour)?.record.name ?? colour}, ${date}${planned === true ? ", planned" : ""}`,
    pigments.map(({ pigment, massG }) => `${massG} g of ${pigment}`).join(", "),
    ...(tubes.length === 0
      ? []
      : [tubes.map(({ ml, count }) => `${counted(count, "tube")} of ${ml} ml`).join(", ")]),
  ].join("; ");
}
