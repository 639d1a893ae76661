import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { madeStep, type KeptSteps } from "../kept/kept-steps.ts";
import { MISSING_LETTER, missingLetters } from "../print/printable-letters.ts";
import { warningAt } from "../records/fault.ts";
import type { Records } from "../records/records.ts";
import { valuesIn } from "../records/record-values.ts";
import type { RecordPath } from "../records/yaml-record.ts";

interface PlacedRecord {
  readonly record: object;
  readonly place: (path: RecordPath) => Diagnostic["place"];
}

const STEP = { modules: ["lib/site/letter-warnings.ts"], name: "letters of records" };

/**
 * Letters that no font of the paper has: each told once a record, at the first value that holds it.
 * @param records that note what is read of them, where steps are kept.
 */
export function letterWarnings(
  {
    workshop,
    workshopPlace,
    pigments,
    vehicles,
    colours,
  }: Pick<Records, "workshop" | "workshopPlace" | "pigments" | "vehicles" | "colours">,
  steps?: KeptSteps,
): Diagnostic[] {
  const ofRecord = (of: string, { record, place }: PlacedRecord): Diagnostic[] =>
    madeStep(steps, { ...STEP, of }, () => lettersWithout(record)).map(({ letters, path }) =>
      warning(letters, place(path)),
    );
  return [
    ...ofRecord("workshop", { record: workshop, place: workshopPlace }),
    ...Object.entries({ pigments, vehicles, colours }).flatMap(([folder, records]) =>
      [...records].flatMap(([slug, one]) => ofRecord(`${folder}/${slug}`, one)),
    ),
  ];
}

/** Letters without a form in the fonts, by the first value that holds them. */
function lettersWithout(
  record: object,
): { readonly letters: readonly string[]; readonly path: RecordPath }[] {
  const told = new Set<string>();
  return valuesIn(record).flatMap(({ value, path }) => {
    if (typeof value !== "string") return [];
    const letters = missingLetters(value).filter((letter) => !told.has(letter));
    for (const letter of letters) told.add(letter);
    return letters.length > 0 ? [{ letters, path }] : [];
  });
}

function warning(letters: readonly string[], place: Diagnostic["place"]): Diagnostic {
  const named = letters.map(
    (letter) => `"${letter}" (U+${codeOf(letter).toString(16).toUpperCase().padStart(4, "0")})`,
  );
  return warningAt(place, "print/missing-letter", {
    message: `The fonts of sheets and cards on paper have no ${named.join(", ")}: ${MISSING_LETTER} is printed instead`,
    actual: letters.join(""),
    hint: "pages on screen show it in a font of the reader's",
  });
}

function codeOf(letter: string): number {
  return letter.codePointAt(0) ?? 0;
}
