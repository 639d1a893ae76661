import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { errorAt, fileStart, warningAt, type Faults } from "./fault.ts";
import { keysOf } from "../quantities/members.ts";
import { isFaulty, type ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { remembered } from "../quantities/remembered.ts";
import { valuesIn } from "./record-values.ts";
import type { RecordPath } from "./yaml-record.ts";

/** What kind of record a slug may name. */
const KINDS = ["pigments", "vehicles", "colours", "sources", "lots", "answers"] as const;
type Kind = (typeof KINDS)[number];

const COLOUR = ["colours"] as const;
const LOT = ["lots"] as const;
const ANSWER = ["answers"] as const;
const PIGMENT = ["pigments"] as const;
const VEHICLE = ["vehicles"] as const;
/** A white is a paint, or the dry pigment that it is made of. */
const WHITE = ["colours", "pigments"] as const;
const SOURCE = ["sources"] as const;

/** Keys that name another record, and where that may lie; a `source` names one wherever it stands. */
const REFERENCES: Readonly<
  Record<
    "workshop" | "pigments" | "vehicles" | "colours" | "lots" | "trials" | "answers",
    Readonly<Record<string, readonly Kind[]>>
  >
> = {
  workshop: {
    vehicle: VEHICLE,
    strengthReference: COLOUR,
    "leadingPair[]": COLOUR,
    "pairs[][]": COLOUR,
    "pairs[].colours[]": COLOUR,
    "firstQuestions[]": ANSWER,
  },
  pigments: {},
  vehicles: {},
  colours: {
    "pigments[].pigment": PIGMENT,
    "pigments[].paint": COLOUR,
    "tints[].white": WHITE,
    "additions[].vehicle": VEHICLE,
    "dryingTrials[].tintedWith": WHITE,
    replacedBy: COLOUR,
    standard: LOT,
    vehicle: VEHICLE,
  },
  lots: {
    colour: COLOUR,
    "pigments[].pigment": PIGMENT,
    "oil.vehicle": VEHICLE,
    "additions[].vehicle": VEHICLE,
    "tints[].white": WHITE,
    "standard.tints[].white": WHITE,
  },
  trials: { colour: COLOUR, lot: LOT, tintedWith: WHITE },
  answers: {
    "colours[]": COLOUR,
    "reply.colours[]": COLOUR,
    "claims[].lowestOf[]": COLOUR,
    "claims[].highestOf[]": COLOUR,
  },
};

/**
 * Hold every reference between records against what is there, and every record
 * against what refers to it: a name that leads nowhere is an error, a pigment,
 * vehicle, reading or source that nothing uses is a warning.
 */
export function* referenceFaults(
  files: ParsedFiles,
  builtInSources: ReadonlySet<string>,
  usedReadings: ReadonlySet<string>,
): Faults {
  const used = new Set<string>();
  for (const { from, path, slug, kinds } of referencesOf(files)) {
    const found = kinds.filter((kind) => files[kind].has(slug) || isFaulty(files, kind, slug));
    found.forEach((kind) => used.add(`${kind}/${slug}`));
    const builtIn = kinds.includes("sources") ? builtInSources : new Set<string>();
    if (found.length > 0 || builtIn.has(slug)) continue;
    const elsewhere = KINDS.find((kind) => files[kind].has(slug));
    const folders = kinds.map((kind) => `${kind}/`).join(" or ");
    yield errorAt(from.yaml.place(path), "records/missing-reference", {
      message: `There is no ${slug} in ${folders}`,
      actual: slug,
      expected: `the file name of a record in ${folders}`,
      hint:
        elsewhere === undefined
          ? nearestHint(slug, [...kinds.flatMap((kind) => [...files[kind].keys()]), ...builtIn])
          : `there is one in ${elsewhere}/`,
    });
  }

  // What a record with a fault refers to is not known.
  const allRead = files.faulty.size === 0;
  for (const kind of ["pigments", "vehicles", "sources"] as const)
    for (const { slug, file } of files[kind].values()) {
      if (allRead && !used.has(`${kind}/${slug}`)) yield unused(file, slug);
      if (kind === "sources" && builtInSources.has(slug))
        yield errorAt(fileStart(file), "records/source-clash", {
          message: `The built-in bibliography has a source ${slug} already: give the file another name`,
          actual: slug,
          expected: "a key that the built-in bibliography does not have",
        });
    }
  for (const [stem, { file }] of files.readings)
    if (allRead && !usedReadings.has(stem)) yield unused(file, stem);
}

interface Reference {
  readonly from: Parsed<unknown>;
  readonly path: RecordPath;
  readonly slug: string;
  readonly kinds: readonly Kind[];
}

/** Every name in a record that stands for another record. */
function referencesOf(files: ParsedFiles): Reference[] {
  return keysOf(REFERENCES).flatMap((folder) =>
    [...(folder === "workshop" ? [files.workshop] : files[folder].values())].flatMap((from) =>
      from === undefined ? [] : referencesIn(from, folder),
    ),
  );
}

const referencesIn = remembered((from: Parsed<unknown>, folder: keyof typeof REFERENCES) => {
  return valuesIn(from.record).flatMap(({ value, path }): Reference[] => {
    if (typeof value !== "string") return [];
    const key = path.map((part) => (typeof part === "number" ? "[]" : `.${String(part)}`));
    const kinds = path.at(-1) === "source" ? SOURCE : REFERENCES[folder][key.join("").slice(1)];
    return kinds === undefined ? [] : [{ from, path, slug: value, kinds }];
  });
});

function unused(file: string, slug: string): Diagnostic {
  return warningAt(fileStart(file), "records/unused", {
    message: `No record refers to ${slug}, so nothing comes of it`,
    actual: slug,
    expected: "a record that refers to it",
  });
}
