import type { Records } from "../records/records.ts";
import type { HazardRecord } from "../records/schema/hazard-form.ts";
import type { Words } from "../words/words.ts";

/** What stands under everything that may hurt: what goes first, and that the rest is from suppliers' papers, where any record holds one. */
export function cautionLine({
  records,
  words,
}: {
  readonly records: Pick<Records, "pigments" | "vehicles">;
  readonly words: Words;
}): string {
  const substances = [...records.pigments.values(), ...records.vehicles.values()];
  return cautionLineOf(
    substances.map(({ record }) => record),
    words,
  );
}

/** The same below what goes by some substances alone. */
export function cautionLineOf(
  substances: readonly HazardRecord[],
  { pages: { cautionLine: line, fromPapers } }: Words,
): string {
  return substances.some(hasPaper) ? `${fromPapers} ${line}` : line;
}

function hasPaper({ hazards, acuteToxicity, components }: HazardRecord): boolean {
  return [hazards, acuteToxicity, components].some((stated) => stated !== undefined);
}
