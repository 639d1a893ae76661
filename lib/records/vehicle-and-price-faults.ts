import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { amountEnds } from "./amount-ends.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { VehicleRecord } from "./schema/vehicle.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import type { RecordPath } from "./yaml-record.ts";

type Fault = Pick<Diagnostic, "rule" | "message" | "actual" | "expected" | "hint"> & {
  readonly severity?: Diagnostic["severity"];
};

/** Faults that no schema sees because they lie between two keys of a record. */
export function tradeFaults(files: ParsedFiles): Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  const complainer =
    ({ yaml }: Parsed<unknown>) =>
    (path: RecordPath, { severity = "error", ...fault }: Fault): void => {
      diagnostics.push({ severity, place: yaml.place(path), ...fault });
    };
  for (const colour of files.colours.values()) {
    partsFaults(colour, files, complainer(colour));
    ratioFaults(colour, complainer(colour));
    selfFaults(colour, files, complainer(colour));
  }
  for (const vehicle of files.vehicles.values()) {
    densityFaults(vehicle, complainer(vehicle));
    metalFaults(vehicle, complainer(vehicle));
  }
  for (const one of [
    ...files.colours.values(),
    ...files.pigments.values(),
    ...files.vehicles.values(),
  ])
    rangeFaults(one.record, [], complainer(one));
  return diagnostics;
}

function partsFaults(
  { slug, record }: Parsed<ColourRecord>,
  { colours }: ParsedFiles,
  complain: (path: RecordPath, fault: Fault) => void,
): void {
  const count = record.pigments.length;
  const ofPigment = record.pigments.filter((part) => part.parts !== undefined).length;
  const ofPaint = record.pigments.filter((part) => part.paintParts !== undefined).length;
  if (ofPigment > 0 && ofPaint > 0)
    complain(["pigments"], {
      rule: "records/parts",
      message:
        "Parts of dry pigment and parts of paint stand side by side: give one of the two for all pigments",
      actual: `parts of ${ofPigment}, paintParts of ${ofPaint} of ${count} pigments`,
      expected: "parts of all pigments, or paintParts of all",
    });
  else if (ofPigment + ofPaint > 0 && ofPigment + ofPaint < count)
    complain(["pigments"], {
      rule: "records/parts",
      message: `${ofPigment + ofPaint} of ${count} pigments have parts: give parts for all of them or for none`,
      actual: `parts of ${ofPigment + ofPaint} of ${count} pigments`,
      expected: "parts of all pigments or of none",
    });
  record.pigments.forEach((part, i) => paintFaults(slug, part, i, colours, complain));
  const seen = new Set<string>();
  record.pigments.forEach(({ pigment }, i) => {
    if (seen.has(pigment))
      complain(["pigments", i, "pigment"], {
        rule: "records/duplicate",
        message: `The pigment ${pigment} is named twice`,
        actual: pigment,
        expected: "each pigment once",
      });
    seen.add(pigment);
  });
}

/** A paint that nobody squeezed out, that holds something else, or that could be one of several. */
function paintFaults(
  slug: string,
  { pigment, paint, paintParts }: ColourRecord["pigments"][number],
  i: number,
  colours: ParsedFiles["colours"],
  complain: (path: RecordPath, fault: Fault) => void,
): void {
  const alone = [...colours.values()]
    .filter((colour) => colour.slug !== slug && isOfPigmentAlone(colour.record, pigment))
    .map((colour) => colour.slug);
  if (paint !== undefined && paintParts === undefined)
    complain(["pigments", i, "paint"], {
      rule: "records/parts",
      message: `The paint ${paint} is named without its paintParts`,
      actual: paint,
      expected: "paintParts beside it, by mass of paint",
    });
  else if (paint !== undefined && colours.has(paint) && !alone.includes(paint))
    complain(["pigments", i, "paint"], {
      rule: "records/parts",
      message: `The paint ${paint} is not a colour made of ${pigment} alone`,
      actual: paint,
      expected: `a colour made of ${pigment} alone`,
      ...(alone.length === 0 ? {} : { hint: `made of it: ${alone.join(", ")}` }),
    });
  else if (paint === undefined && paintParts !== undefined && alone.length > 1)
    complain(["pigments", i, "paintParts"], {
      rule: "records/parts",
      message: `${alone.length} colours are made of ${pigment} alone: name the one that was weighed as paint`,
      actual: "no paint",
      expected: `paint, one of ${alone.join(", ")}`,
    });
}

function isOfPigmentAlone({ pigments }: ColourRecord, pigment: string): boolean {
  return pigments.length === 1 && pigments[0]?.pigment === pigment;
}

function ratioFaults(
  {
    record,
  }: Parsed<{
    tints?: readonly { massRatio: string; white: string; ratioKind: string }[] | undefined;
  }>,
  complain: (path: RecordPath, fault: Fault) => void,
): void {
  record.tints?.forEach((tint, i) => {
    if (tint.massRatio.split(":").some((part) => !(Number(part) > 0))) {
      complain(["tints", i, "massRatio"], {
        rule: "records/ratio",
        message: `The ratio ${tint.massRatio} has a side that is 0: colour and white are both above 0`,
        actual: tint.massRatio,
        expected: "colour to white, both above 0",
      });
    }
  });
}

/** Addresses below colours/ that the catalogue's own pages have. */
const CATALOGUE_PAGE = /^by-|^in-the-whites$/;

/** A name of the catalogue's, a white that is the colour itself, a drier or thinner in place of an oil. */
function selfFaults(
  { slug, record }: Parsed<ColourRecord>,
  { vehicles }: ParsedFiles,
  complain: (path: RecordPath, fault: Fault) => void,
): void {
  if (CATALOGUE_PAGE.test(slug))
    complain([], {
      rule: "records/slug",
      message: `A page of the catalogue has the address ${slug}: by- and what follows, and in-the-whites, are taken`,
      actual: slug,
      expected:
        "a name that none of the catalogue's own pages has: by- and what follows, in-the-whites",
    });
  record.tints?.forEach(({ white }, i) => {
    if (white === slug)
      complain(["tints", i, "white"], {
        rule: "records/tint",
        message: `${white} is let down in itself: name the white`,
        actual: white,
        expected: "another colour than the one let down",
      });
  });
  const kind = record.vehicle === undefined ? undefined : vehicles.get(record.vehicle)?.record.kind;
  if (kind === "drier" || kind === "thinner")
    complain(["vehicle"], {
      rule: "records/vehicle",
      message: `The vehicle ${record.vehicle ?? ""} is a ${kind}: name an oil or a medium here, driers and thinners under additions`,
      actual: `${record.vehicle ?? ""}, a ${kind}`,
      expected: "an oil or a medium; driers and thinners stand under additions",
    });
}

/** Densities [g/cm3] that oils, mediums, driers and thinners reach. Memory of the trade. */
const VEHICLE_DENSITY = [0.6, 1.4] as const;

function densityFaults(
  { record }: Parsed<VehicleRecord>,
  complain: (path: RecordPath, fault: Fault) => void,
): void {
  const end = amountEnds(record.densityGPerCm3, ["densityGPerCm3"]).find(
    ({ value }) => !(value >= VEHICLE_DENSITY[0] && value <= VEHICLE_DENSITY[1]),
  );
  if (end !== undefined)
    complain(end.path, {
      rule: "records/vehicle-density",
      message: `The density of this vehicle is ${end.value} g/cm3, and vehicles lie between ${VEHICLE_DENSITY[0]} and ${VEHICLE_DENSITY[1]} g/cm3`,
      actual: String(end.value),
      expected: `${VEHICLE_DENSITY[0]} to ${VEHICLE_DENSITY[1]} g/cm3`,
      ...(end.value >= 1000 * VEHICLE_DENSITY[0] && end.value <= 1000 * VEHICLE_DENSITY[1]
        ? { hint: `${end.value / 1000} g/cm3, if it was given in kg/m3` }
        : {}),
    });
}

/** Metal in a drier as sold [%] below which the figure was most likely a fraction. Common practice. */
const LEAST_DRIER_METAL_PERCENT = 0.5;

function metalFaults(
  { record }: Parsed<VehicleRecord>,
  complain: (path: RecordPath, fault: Fault) => void,
): void {
  if (record.kind !== "drier") return;
  record.metals?.forEach(({ percent }, i) => {
    if (percent !== undefined && percent < LEAST_DRIER_METAL_PERCENT)
      complain(["metals", i, "percent"], {
        severity: "warning",
        rule: "records/drier-metal",
        message: `A drier of ${percent} % metal hardly dries: driers are sold with ${LEAST_DRIER_METAL_PERCENT} % or more`,
        actual: `${percent} %`,
        expected: `${LEAST_DRIER_METAL_PERCENT} % or more`,
        hint: `${Number((100 * percent).toPrecision(3))} %, if it was given as a fraction`,
      });
  });
}

/** An estimate's two ends in the wrong order, at whatever depth. */
function rangeFaults(
  value: unknown,
  path: RecordPath,
  complain: (path: RecordPath, fault: Fault) => void,
): void {
  if (typeof value !== "object" || value === null) return;
  for (const [key, entry] of Object.entries(value)) {
    const here = [...path, Array.isArray(value) ? Number(key) : key];
    if (key === "value" && Array.isArray(entry) && Number(entry[0]) > Number(entry[1])) {
      complain(here, {
        rule: "records/range",
        message: `The range ${JSON.stringify(entry)} begins with its upper end`,
        actual: JSON.stringify(entry),
        expected: "the lower end first",
      });
    }
    rangeFaults(entry, here, complain);
  }
}
