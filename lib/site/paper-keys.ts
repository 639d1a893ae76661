import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { BenchView, SheetView } from "../blocks/page-kinds.ts";
import { keptBesideProgram } from "../kept/beside-program.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { CardSize } from "../print/card-size.ts";
import type { SheetToPrint } from "../print/sheet-paper.ts";
import { remembered } from "../quantities/remembered.ts";
import type { Records } from "../records/records.ts";
import { contentKey } from "../sheet/revision.ts";
import { PACKAGE_ROOT } from "./package-root.ts";

/** Keys by which a PDF of an earlier output is kept: of equal keys the same bytes would be drawn. */

/** Everything that a sheet on paper is made from, and the program that makes it. */
export function sheetKey(
  { slug, sheet, bench, caution, context: { records, date } }: SheetToPrint,
  program: string,
): string {
  return contentKey(
    JSON.stringify([
      program,
      records.workshop,
      date,
      slug,
      caution,
      printedOf(sheet),
      printedOf(bench),
    ]),
  );
}

/** The same by all that both pages show, which may be known before they are filled. */
export function soonerSheetKey(
  { slug, key, caution, context: { records, date } }: SheetToPrint,
  program: string,
): string {
  return contentKey(JSON.stringify([program, workshopKey(records), date, slug, caution, key()]));
}

/** Of a large range it is told once for all sheets. */
const workshopKey = remembered(({ workshop }: Pick<Records, "workshop">) =>
  contentKey(JSON.stringify(workshop)),
);

/** Parts of a page that paper leaves to the site: none of them moves a mark on it. */
export const LEFT_TO_THE_SITE: readonly string[] = [
  "jsonLd",
  "image",
  "actions",
  "contents",
  "changes",
  "asOf",
  "standingsFold",
  "back",
  "label",
  "reply",
  "downloads",
  "heading",
];

function printedOf(view: SheetView | BenchView): object {
  return Object.fromEntries(
    Object.entries(view).filter(([name]) => !LEFT_TO_THE_SITE.includes(name)),
  );
}

/** The sheets by family, in their order, what is said of the workshop, and the date. */
export function rangeKey(
  families: readonly (readonly [name: string, sheets: readonly string[]])[],
  { records: { workshop }, date }: PageContext,
  program: string,
): string {
  return contentKey(JSON.stringify([program, families, workshop, date]));
}

/** Every mark of the cards, and how they lie on their paper. */
export function cardsKey(
  marks: string,
  size: CardSize,
  { records: { workshop }, date, words }: PageContext,
  program: string,
): string {
  return contentKey(JSON.stringify([program, size, workshop.name, date, words.language, marks]));
}

/** The rooms that paper is drawn by, with all that they import. */
export const DRAWING_ROOMS = [
  "print",
  "kept",
  "plots",
  "words",
  "hazard",
  "quantities",
  "diagnostics",
  "exchange",
] as const;

/** Changes whenever something that draws may have changed: the rooms that draw, the words, the libraries. */
export function programKey(): string {
  return keptBesideProgram("paper-key", [process.version], drawingKey);
}

function drawingKey(): string {
  const sources = DRAWING_ROOMS.map((room) => join(PACKAGE_ROOT, "lib", room)).flatMap((room) =>
    readdirSync(room, { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts"))
      .sort()
      .map((name) => [name, readFileSync(join(room, name), "utf8")]),
  );
  const { version, dependencies } = JSON.parse(
    readFileSync(join(PACKAGE_ROOT, "package.json"), "utf8"),
  ) as { version: string; dependencies: object };
  return contentKey(JSON.stringify([version, dependencies, process.versions.node, sources]));
}
