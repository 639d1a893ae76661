import type { FigureIndex } from "../claims/figure-index.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { errorAt } from "../records/fault.ts";
import type { Answer } from "../records/records.ts";
import { isPrivatePath } from "../sheet/figure-table.ts";
import { PUBLIC_FIGURE } from "./arg-kinds.ts";
import { LIGHTFASTNESS } from "./reply-material.ts";

/** Figures of a reply that none of its colours has. */
export function replyFaults(
  { record, place }: Answer,
  colours: readonly string[],
  index: FigureIndex,
): Diagnostic[] {
  const asked = record.reply?.colours ?? colours;
  return (record.reply?.figures ?? []).flatMap((path, i): Diagnostic[] => {
    if (isPrivatePath(path))
      return [
        errorAt(place(["reply", "figures", i]), "answers/reply", {
          message: `${path} is the workshop's alone, and a reply is sent out`,
          actual: path,
          expected: PUBLIC_FIGURE,
        }),
      ];
    if (path === LIGHTFASTNESS) return [];
    if (asked.some((slug) => index.figureIfAny(`${slug}.${path}`) !== undefined)) return [];
    const known = new Set(asked.flatMap((slug) => index.paths(slug)));
    return [
      errorAt(place(["reply", "figures", i]), "answers/reply", {
        message: `No colour of the reply has a figure ${path}`,
        actual: path,
        expected: "a figure path without the colour, as in the evidence of sheet.json",
        hint: nearestHint(path, known),
      }),
    ];
  });
}
