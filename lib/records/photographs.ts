import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import type { ContentTree } from "./content-tree.ts";
import { errorAt, fileStart, warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { PICTURE_ENDINGS, UNREAD_PICTURES, type PhotographFile } from "./photograph-file.ts";
import type { Quadrilateral } from "../patches/quadrilateral.ts";
import type { Box, PhotographRecord } from "./schema/photograph.ts";
import { knownColours } from "./known-colours.ts";
import type { Colour, LabReading, SpectrumReading } from "./records.ts";
import type { ReadingResolver } from "./resolved-readings.ts";
import type { PictureSizes, TakenPhotograph } from "./taken-photograph.ts";
import type { RecordPath } from "./yaml-record.ts";

/** Folders whose records have photographs. */
const OWNERS = ["pigments", "colours", "lots"] as const;
export type PhotographOwner = (typeof OWNERS)[number];

/** A photograph as a record names it, with its file. */
export interface Photograph {
  readonly owner: { readonly folder: PhotographOwner; readonly slug: string };
  readonly record: PhotographRecord;
  readonly source: PhotographFile;
  /** What its colours may be corrected by. */
  readonly known?: KnownColours;
  /** Where in the record a value of it stands. */
  readonly place: (path: RecordPath) => Diagnostic["place"];
  /** Once its file is read; before that nobody knows whether it is a picture at all. */
  readonly taken?: TakenPhotograph;
  /** Once they are made, which only a site needs. */
  readonly pictures?: PictureSizes;
  /** The paint alone with its texture as photographed and its colour as read, where both are there. */
  readonly inReadColour?: PictureSizes;
}

/** Patches of known colour in a photograph, and parts of a bare ground [px of the upright picture]. */
export interface KnownColours {
  readonly patches: readonly {
    readonly name: string;
    readonly corners: Quadrilateral;
    readonly reading: SpectrumReading | LabReading;
  }[];
  readonly bare: readonly Box[];
}

/** What resolves the readings of patches. */
export interface PatchReadings extends Pick<ReadingResolver, "resolve"> {
  readonly colours: readonly Colour[];
  /** Whether a colour is there, though its record could not be read. */
  readonly isFaulty: (slug: string) => boolean;
}

/** Every photograph that a record names, in order of folder and slug, and what of them leads nowhere. */
export function namedPhotographs(
  files: ParsedFiles,
  { photographs: found, unread }: Pick<ContentTree, "photographs" | "unread">,
  readings: PatchReadings,
): { readonly photographs: readonly Photograph[]; readonly diagnostics: readonly Diagnostic[] } {
  const diagnostics: Diagnostic[] = [...twins(found)];
  const used = new Set<string>();
  const photographs = OWNERS.flatMap((folder) =>
    [...files[folder].values()].flatMap((owner: Owner) =>
      (owner.record.photographs ?? []).flatMap((record, i): Photograph[] => {
        const source = found.find(({ name }) => name === record.file);
        used.add(record.file);
        if (source === undefined) {
          if (!unread.has(`photographs/${record.file}`) && !unread.has("photographs/"))
            diagnostics.push(
              missing(record.file, found, owner.yaml.place(["photographs", i, "file"])),
            );
          return [];
        }
        const known = knownColours(record, readings, diagnostics, {
          yaml: owner.yaml,
          path: ["photographs", i, "correctedBy"],
        });
        return [
          {
            owner: { folder, slug: owner.slug },
            record,
            source,
            ...(known !== undefined && { known }),
            place: (path) => owner.yaml.place(["photographs", i, ...path]),
          },
        ];
      }),
    ),
  );
  if (files.faulty.size === 0)
    for (const { file, name } of found)
      if (!used.has(name))
        diagnostics.push(
          warningAt(fileStart(file), "records/unused", {
            message: `No record refers to the photograph ${name}, so nothing comes of it`,
            actual: name,
            expected: "a record that refers to it",
          }),
        );
  return { photographs, diagnostics };
}

type Owner = Parsed<{ readonly photographs?: readonly PhotographRecord[] | undefined }>;

function missing(
  name: string,
  found: readonly PhotographFile[],
  place: Diagnostic["place"],
): Diagnostic {
  const ending = /\.[^.]*$/.exec(name)?.[0].toLowerCase() ?? "";
  const unreadable = UNREAD_PICTURES.get(ending);
  if (!PICTURE_ENDINGS.includes(ending))
    return errorAt(place, "records/photograph-kind", {
      message: `${name} is ${unreadable === undefined ? "no picture that is read" : "no picture yet"}: a photograph ends in ${PICTURE_ENDINGS.join(", ")}`,
      actual: ending === "" ? name : ending,
      expected: PICTURE_ENDINGS.join(", "),
      hint: unreadable && `it is ${unreadable}`,
    });
  return errorAt(place, "records/missing-reference", {
    message: `There is no ${name} in photographs/`,
    actual: name,
    expected: "the name of a file in photographs/",
    hint: nearestHint(
      name,
      found.map((one) => one.name),
    ),
  });
}

/** Two files of one name but for its ending or its capitals would be published under one name. */
function* twins(found: readonly PhotographFile[]): Faults {
  for (const [i, { file, stem }] of found.entries()) {
    const twin = found.slice(0, i).find((other) => other.stem.toLowerCase() === stem.toLowerCase());
    if (twin !== undefined)
      yield errorAt(fileStart(file), "records/duplicate", {
        message: `There is a second photograph ${stem} beside ${twin.file}: give it another name`,
        actual: stem,
        expected: `only ${twin.file}`,
      });
  }
}
