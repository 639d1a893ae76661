import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { labelSheet } from "../print/label-sheet.ts";
import { packageSizes } from "../print/package-size.ts";
import { errorAt } from "../records/fault.ts";
import type { Records } from "../records/records.ts";

/** Labels of workshop.yaml that no tube is known for, or that their own sheet of paper does not hold: an error each, at its line. */
export function labelFaults({ workshop, workshopPlace }: Records): Diagnostic[] {
  return (workshop.labels ?? []).flatMap((label, i): Diagnostic[] => {
    try {
      for (const size of packageSizes({ ...workshop, labels: [label] })) labelSheet(size);
      return [];
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      return [
        errorAt(workshopPlace(["labels", i]), "records/label-size", { message: error.message }),
      ];
    }
  });
}
