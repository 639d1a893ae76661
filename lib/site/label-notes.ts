import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { packageSizes } from "../print/package-size.ts";
import { rangeLabels, type NoRoom } from "../print/range-labels.ts";
import type { WorkedSite } from "./site-context.ts";
import { noteAt } from "../records/fault.ts";

/** Sizes of labels without room for what some colours have to say, each at its entry: notes, since only who prints that label is stopped. */
export function labelNotes({
  context,
  steps,
}: Pick<WorkedSite, "context" | "steps">): Diagnostic[] {
  const { records, sheets } = context;
  const step = { modules: ["lib/site/label-notes.ts"], name: "labels without room" };
  const noRoom = madeStep(
    steps,
    step,
    () => rangeLabels(sheets, packageSizes(records.workshop), context).noRoom,
  );
  return (records.workshop.labels ?? []).flatMap(({ name, ml }, i): Diagnostic[] => {
    const lacking = noRoom.filter(({ size }) => size === name);
    if (lacking.length === 0) return [];
    return [
      noteAt(records.workshopPlace(["labels", i]), "print/label-without-room", {
        message: `The label ${name} (${ml} ml) has no room for ${lacking.map(({ colour }) => colour).join(", ")}`,
        hint: wayOut(lacking),
      }),
    ];
  });
}

function wayOut(lacking: readonly NoRoom[]): string {
  const folded = lacking.filter(({ foldOutPages }) => foldOutPages > 0);
  const elsewhere = `npm run labels says what ${folded.length === 0 ? "" : "else "}would hold ${lacking.length === 1 ? "it" : "each of them"}`;
  if (folded.length === 0) return elsewhere;
  const pages = Math.max(...folded.map(({ foldOutPages }) => foldOutPages));
  const printed =
    lacking.length === 1
      ? `it would be printed as a fold-out label of ${pages} pages`
      : `${folded.length} of the ${lacking.length} would be printed as fold-out labels of up to ${pages} pages`;
  return `with foldOut: true ${printed}; ${elsewhere}`;
}
