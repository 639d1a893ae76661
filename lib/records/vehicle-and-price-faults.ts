import { errorAt, warningAt, type Faults } from "./fault.ts";
import { tubeFaults } from "./tube-faults.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { OwnRule } from "./own-faults.ts";
import type { Parsed } from "./parsed-record.ts";
import { valuesIn } from "./record-values.ts";
import { isOfPigmentAlone } from "./made-of.ts";

/** Faults that no schema sees because they lie between two keys of a record. */
export function* tradeFaults(files: ParsedFiles): Faults {
  for (const colour of files.colours.values()) {
    yield* partsFaults(colour, files);
    yield* tubeFaults(colour, files);
    yield* selfFaults(colour, files);
  }
}

function* partsFaults(
  colour: Parsed<ColourRecord>,
  { colours, pigments: known }: ParsedFiles,
): Faults {
  const { pigments } = colour.record;
  const { place } = colour.yaml;
  const count = pigments.length;
  const ofPigment = pigments.filter(({ parts }) => parts !== undefined).length;
  const ofPaint = pigments.filter(({ paintParts }) => paintParts !== undefined).length;
  if (ofPigment > 0 && ofPaint > 0)
    yield errorAt(place(["pigments"]), "records/parts", {
      message:
        "Parts of dry pigment and parts of paint stand side by side: give one of the two for all pigments",
      actual: `parts of ${ofPigment}, paintParts of ${ofPaint} of ${count} pigments`,
      expected: "parts of all pigments, or paintParts of all",
    });
  else if (ofPigment + ofPaint > 0 && ofPigment + ofPaint < count)
    yield errorAt(place(["pigments"]), "records/parts", {
      message: `${ofPigment + ofPaint} of ${count} pigments have parts: give parts for all of them or for none`,
      actual: `parts of ${ofPigment + ofPaint} of ${count} pigments`,
      expected: "parts of all pigments or of none",
    });
  const names = pigments.map(({ pigment }) => pigment);
  for (const [i, pigment] of names.entries()) {
    // What is made of a pigment that there is not was told at its name.
    if (known.has(pigment)) yield* paintFaults(colour, i, colours);
    if (names.indexOf(pigment) < i)
      yield errorAt(place(["pigments", i, "pigment"]), "records/duplicate", {
        message: `The pigment ${pigment} is named twice`,
        actual: pigment,
        expected: "each pigment once",
      });
  }
}

/** A paint that nobody squeezed out, that holds something else, or that could be one of several. */
function* paintFaults(
  { slug, record, yaml }: Parsed<ColourRecord>,
  i: number,
  colours: ParsedFiles["colours"],
): Faults {
  const { pigment = "", paint, paintParts } = record.pigments[i] ?? {};
  const alone = [...colours.values()]
    .filter((colour) => colour.slug !== slug && isOfPigmentAlone(colour.record, pigment))
    .map((colour) => colour.slug);
  if (paint !== undefined && paintParts === undefined)
    yield errorAt(yaml.place(["pigments", i, "paint"]), "records/parts", {
      message: `The paint ${paint} is named without its paintParts`,
      actual: paint,
      expected: "paintParts beside it, by mass of paint",
    });
  else if (paint !== undefined && colours.has(paint) && !alone.includes(paint))
    yield errorAt(yaml.place(["pigments", i, "paint"]), "records/parts", {
      message: `The paint ${paint} is not a colour made of ${pigment} alone`,
      actual: paint,
      expected: `a colour made of ${pigment} alone`,
      hint: alone.length === 0 ? undefined : `made of it: ${alone.join(", ")}`,
    });
  else if (paint === undefined && paintParts !== undefined && alone.length > 1)
    yield errorAt(yaml.place(["pigments", i, "paintParts"]), "records/parts", {
      message: `${alone.length} colours are made of ${pigment} alone: name the one that was weighed as paint`,
      actual: "no paint",
      expected: `paint, one of ${alone.join(", ")}`,
    });
}

/** A let-down of nothing, or in nothing. */
export const ratioFaults: OwnRule<ColourRecord> = function* ({ record: { tints = [] }, yaml }) {
  for (const [i, { massRatio }] of tints.entries())
    if (massRatio.split(":").some((part) => !(Number(part) > 0)))
      yield errorAt(yaml.place(["tints", i, "massRatio"]), "records/ratio", {
        message: `The ratio ${massRatio} has a side that is 0: colour and white are both above 0`,
        actual: massRatio,
        expected: "colour to white, both above 0",
      });
};

/** Addresses below colours/ that the catalogue's own pages have. */
const CATALOGUE_PAGE = /^by-|^in-the-whites$/;

/** A name of the catalogue's, a white that is the colour itself, a drier or thinner in place of an oil. */
function* selfFaults(
  { slug, record: { tints = [], vehicle, additions = [] }, yaml }: Parsed<ColourRecord>,
  { vehicles, workshop }: ParsedFiles,
): Faults {
  const own = vehicle ?? workshop?.record.vehicle;
  for (const [i, added] of additions.entries())
    if (added.vehicle === own)
      yield warningAt(yaml.place(["additions", i, "vehicle"]), "records/vehicle", {
        message: `${added.vehicle} is added to itself: it is the vehicle of this colour, and all of it stands in the oil index`,
        actual: added.vehicle,
        expected: "a drier, a medium or another oil",
      });
  if (CATALOGUE_PAGE.test(slug))
    yield errorAt(yaml.place([]), "records/slug", {
      message: `A page of the catalogue has the address ${slug}: by- and what follows, and in-the-whites, are taken`,
      actual: slug,
      expected:
        "a name that none of the catalogue's own pages has: by- and what follows, in-the-whites",
    });
  for (const [i, { white }] of tints.entries())
    if (white === slug)
      yield errorAt(yaml.place(["tints", i, "white"]), "records/tint", {
        message: `${white} is let down in itself: name the white`,
        actual: white,
        expected: "another colour than the one let down",
      });
  const kind = vehicle === undefined ? undefined : vehicles.get(vehicle)?.record.kind;
  if (kind === "drier" || kind === "thinner")
    yield errorAt(yaml.place(["vehicle"]), "records/vehicle", {
      message: `The vehicle ${vehicle ?? ""} is a ${kind}: name an oil or a medium here, driers and thinners under additions`,
      actual: `${vehicle ?? ""}, a ${kind}`,
      expected: "an oil or a medium; driers and thinners stand under additions",
    });
}

/** An estimate's two ends in the wrong order, at whatever depth. */
export const turnedRangeFaults: OwnRule<unknown> = function* ({ record, yaml }) {
  for (const { value, path } of valuesIn(record))
    if (path.at(-1) === "value" && Array.isArray(value) && Number(value[0]) > Number(value[1]))
      yield errorAt(yaml.place(path), "records/range", {
        message: `The range ${JSON.stringify(value)} begins with its upper end`,
        actual: JSON.stringify(value),
        expected: "the lower end first",
      });
};
