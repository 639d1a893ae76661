import type { TracedLots } from "../claims/traced-lots.ts";
import type { Lot, Records } from "../records/records.ts";
import type { LabelPrint } from "../site/printed-labels.ts";
import { counted } from "./told.ts";

/** Lots that are called back together, as lines: which tubes and labels, and what else holds what they were made with. */
export function lotsText(
  { kind, name, lots, madeWith }: TracedLots,
  records: Pick<Records, "colours">,
  printed: readonly LabelPrint[],
): string {
  const tubes = lots
    .flatMap(({ record }) => record.tubes ?? [])
    .reduce((sum, { count }) => sum + count, 0);
  return [
    `${kind} ${name}: ${counted(lots.length, "lot")}, ${tubes === 0 ? "no tubes" : counted(tubes, "tube")}`,
    ...lots.flatMap((lot) => [
      `  ${lotLine(lot, records)}`,
      ...labelLines(lot.record.number, printed).map((line) => `    ${line}`),
    ]),
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

/** Labels printed with a lot's number, all together and then a line a print; none where none was. */
export function labelLines(number: string, printed: readonly LabelPrint[]): string[] {
  const own = printed.filter(({ lot }) => lot?.toLowerCase() === number.toLowerCase());
  const all = own.reduce((sum, { copies }) => sum + copies, 0);
  return own.length === 0
    ? []
    : [
        `${counted(all, "label")} printed`,
        ...own.map(
          ({ date, colour, size, ml, copies }) =>
            `  ${date}: ${counted(copies, "label")} of ${colour}, ${size}, ${ml} ml`,
        ),
      ];
}
