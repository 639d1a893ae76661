import { nearestHint } from "../../diagnostics/nearest-word.ts";
import { attributeCell, cxfSpecifications, type CxfSpecification } from "./cxf-specification.ts";
import { childrenOf, cxfTree, elementAt, type CxfElement } from "./cxf-tree.ts";
import type { FaultList, ReadText } from "./fault-list.ts";
import { foundWavelength } from "./found-grid.ts";
import {
  cellList,
  fileNotes,
  foundLab,
  foundXyz,
  type ReadingColumn,
  type ReadingFile,
  type ReadingNotes,
  type WrittenCell,
} from "./reading-column.ts";
import { readingNames } from "./reading-names.ts";
import { MOST_CELLS } from "./size-limits.ts";
import { writtenNumber } from "./written-number.ts";

/**
 * Readings of a CxF3 / ISO 17972-1 document, one a measured object: by its Name,
 * or by its Id where names repeat. An object with several spectra (specular
 * included and excluded, say) gives one reading each, called
 * `NAME (SPECIFICATION)`. Spectra are factors, by the format. What stands outside
 * Resources (CustomResources, MixingInformation) is passed over.
 *
 * @returns undefined when the document has a fault; a value that is no number is
 *   none yet, as its object may never be asked for.
 */
export function cxfReading(source: ReadText): ReadingFile | undefined {
  const { spot, faults } = source;
  const root = cxfTree(source);
  if (root === undefined) return undefined;
  if (root.name !== "CxF") {
    faults.error("cxf-root", spot(root.start), {
      message: `The document begins with ${root.name}, and a CxF document with CxF`,
      actual: root.name,
      expected: "CxF",
    });
    return undefined;
  }
  const resources = elementAt(root, "Resources");
  const specifications = cxfSpecifications(resources, source);
  const measured = childrenOf(elementAt(resources, "ObjectCollection"), "Object").filter(
    isMeasured,
  );
  const names = readingNames(
    measured.map((object) => ({
      name: (object.attributes.get("Name")?.value ?? "").normalize("NFC"),
      id: object.attributes.get("Id")?.value ?? "",
      at: spot(object.attributes.get("Name")?.start ?? object.start),
    })),
    faults,
  );

  const columns = new Map<string, ReadingColumn>();
  let values = 0;
  measured.forEach((object, i) => {
    if (values > MOST_CELLS || faults.isFull()) return;
    for (const column of objectColumns(object, names[i] ?? "", specifications, source)) {
      values += column.values.length;
      if (columns.has(column.name) && faults.errorCount() === 0)
        faults.error("duplicated-column", column.at, {
          message: `The reading ${column.name} comes twice`,
          actual: column.name,
          expected: "each reading once",
        });
      columns.set(column.name, column);
    }
  });
  if (values > MOST_CELLS)
    faults.error("size", spot(0), {
      message: `The file has more than ${MOST_CELLS} values, and no more are read`,
      actual: `more than ${MOST_CELLS}`,
      expected: `at most ${MOST_CELLS}`,
    });
  if (columns.size === 0)
    faults.error("no-reading", spot(root.start), {
      message:
        "The document holds no measured object: one has ReflectanceSpectrum, ColorCIELab or ColorCIEXYZ",
      actual: "no measured object",
      expected: "objects with ReflectanceSpectrum, ColorCIELab or ColorCIEXYZ",
    });
  return faults.errorCount() > 0
    ? undefined
    : { format: "CxF3", columns, notes: notesOf(root, [...specifications.values()]) };
}

const MEASURED = ["ReflectanceSpectrum", "ColorCIELab", "ColorCIEXYZ"] as const;

/** Device colour values alone are no measurement. */
function isMeasured(object: CxfElement): boolean {
  return MEASURED.some((name) => childrenOf(elementAt(object, "ColorValues"), name).length > 0);
}

function notesOf(root: CxfElement, specifications: readonly CxfSpecification[]): ReadingNotes {
  const about = elementAt(root, "FileInformation");
  return fileNotes({
    originator: elementAt(about, "Creator")?.text,
    instrument: specifications.find(({ instrument }) => instrument !== undefined)?.instrument,
    date: elementAt(about, "CreationDate")?.text,
    geometry: specifications.find(({ geometryText }) => geometryText !== undefined)?.geometryText,
  });
}

function objectColumns(
  object: CxfElement,
  name: string,
  specifications: ReadonlyMap<string, CxfSpecification>,
  source: ReadText,
): ReadingColumn[] {
  const colours = elementAt(object, "ColorValues");
  const at = source.spot(object.attributes.get("Name")?.start ?? object.start);
  const specified = (element: CxfElement | undefined): CxfSpecification | undefined =>
    specificationFor(element, specifications, source);
  const lab = tristimulus(elementAt(colours, "ColorCIELab"), ["L", "A", "B"], name, source);
  const xyz = tristimulus(elementAt(colours, "ColorCIEXYZ"), ["X", "Y", "Z"], name, source);
  const reckoned = {
    ...(lab && foundLab(lab, specified(elementAt(colours, "ColorCIELab"))?.viewing)),
    ...(xyz && foundXyz(xyz, specified(elementAt(colours, "ColorCIEXYZ"))?.viewing)),
  };
  const spectra = childrenOf(colours, "ReflectanceSpectrum");
  if (spectra.length === 0)
    return lab || xyz
      ? [
          {
            name,
            at,
            values: [],
            places: cellList([]),
            declaredScale: "factor",
            ...reckoned,
            ...found(specified(elementAt(colours, lab ? "ColorCIELab" : "ColorCIEXYZ"))),
          },
        ]
      : [];
  return spectra.map((element, i) => {
    const kind =
      element.attributes.get("ColorSpecification")?.value ??
      element.attributes.get("Name")?.value ??
      String(i + 1);
    const columnName = spectra.length === 1 ? name : `${name} (${kind})`;
    const specification = specified(element);
    const cells = valueCells(element, source);
    const grid = gridOf(element, specification, cells.length, columnName, source);
    return {
      name: columnName,
      at,
      ...(grid ? { grid } : {}),
      values: cells.map((cell) => pointNumber(cell.text) ?? NaN),
      places: cellList(cells),
      declaredScale: "factor",
      ...reckoned,
      ...found(specification),
    };
  });
}

/** How a reading was taken, as far as its specification tells. */
function found(
  specification: CxfSpecification | undefined,
): Pick<ReadingColumn, "geometry" | "isPolarised"> {
  return {
    ...(specification?.geometry !== undefined && { geometry: specification.geometry }),
    ...(specification?.isPolarised === true && { isPolarised: true }),
  };
}

function specificationFor(
  element: CxfElement | undefined,
  known: ReadonlyMap<string, CxfSpecification>,
  { spot, faults }: ReadText,
): CxfSpecification | undefined {
  const named = attributeCell(element, "ColorSpecification", spot);
  if (named === undefined) return undefined;
  const specification = known.get(named.text);
  if (specification) return specification;
  faults.error("cxf-specification", named, {
    message: `No ColorSpecification of this file has the Id ${named.text}`,
    actual: named.text,
    expected: "the Id of a ColorSpecification of this file",
    hint: nearestHint(named.text, known.keys()),
  });
  return undefined;
}

function gridOf(
  element: CxfElement,
  specification: CxfSpecification | undefined,
  count: number,
  name: string,
  { spot, faults }: ReadText,
): ReadingColumn["grid"] {
  const [startNm, stepNm] = (
    [
      ["StartWL", specification?.startNm],
      ["Increment", specification?.stepNm],
    ] as const
  ).map(([what, specified]) =>
    agreed(what, attributeCell(element, what, spot), specified, name, faults),
  );
  if (startNm === undefined || stepNm === undefined) {
    faults.error("cxf-wavelengths", spot(element.start), {
      path: name,
      message: `The ReflectanceSpectrum of ${name} has ${startNm === undefined ? "no StartWL" : ""}${(startNm ?? stepNm) ? "" : " and "}${stepNm === undefined ? "no Increment" : ""}, on itself or on its ColorSpecification`,
      actual: `${startNm === undefined ? "no StartWL" : ""}${(startNm ?? stepNm) ? "" : ", "}${stepNm === undefined ? "no Increment" : ""}`,
      expected: "StartWL and Increment on it or on its ColorSpecification",
    });
    return undefined;
  }
  const start = foundWavelength(startNm, faults);
  const step = pointNumber(stepNm.text);
  if (step === undefined || !(step > 0 && step <= 1000)) {
    faults.error("wavelength-step", stepNm, {
      path: name,
      message: `The Increment is ${stepNm.text || "empty"}, and can be 1 to 20 nm`,
      actual: stepNm.text || "nothing",
      expected: "1 to 20 nm",
    });
    return undefined;
  }
  if (count === 0)
    faults.error("empty-cell", spot(element.contentStart), {
      path: name,
      message: `The ReflectanceSpectrum of ${name} is empty: values stand in it separated by blanks`,
      actual: "nothing",
      expected: "values separated by blanks",
    });
  return start === undefined || count === 0 ? undefined : { startNm: start, stepNm: step, count };
}

/** What the spectrum or its specification says; both may, if they agree. */
function agreed(
  what: string,
  own: WrittenCell | undefined,
  specified: WrittenCell | undefined,
  name: string,
  faults: FaultList,
): WrittenCell | undefined {
  if (own && specified && pointNumber(own.text) !== pointNumber(specified.text)) {
    faults.error("cxf-wavelengths", own, {
      path: name,
      message: `The ${what} is ${own.text}, and its ColorSpecification says ${specified.text} on line ${specified.line}`,
      actual: own.text,
      expected: `${specified.text}, as its ColorSpecification says on line ${specified.line}`,
    });
  }
  return own ?? specified;
}

/** The values of a spectrum where they stand in the text; comments among them are blanked out. */
function valueCells(element: CxfElement, { text, spot }: ReadText): WrittenCell[] {
  const content = text
    .slice(element.contentStart, element.contentEnd)
    .replace(/<!--[\s\S]*?-->|<!\[CDATA\[|\]\]>/g, (markup) => " ".repeat(markup.length));
  return Array.from(content.matchAll(/[^ \t\r\n]+/g), (match) => ({
    text: match[0],
    ...spot(element.contentStart + match.index),
  }));
}

function tristimulus(
  element: CxfElement | undefined,
  parts: readonly [string, string, string],
  name: string,
  { spot, faults }: ReadText,
): readonly [number, number, number] | undefined {
  if (element === undefined) return undefined;
  const [one, two, three] = parts.map((part) => {
    const child = elementAt(element, part);
    const number = pointNumber(child?.text ?? "");
    if (number === undefined) {
      faults.warning("not-a-number", spot(child?.contentStart ?? element.start), {
        path: name,
        message: `${part} of ${element.name} is ${child?.text ? `"${child.text}", no number` : "empty"}`,
        actual: child?.text || "nothing",
        expected: "a number",
      });
    }
    return number;
  });
  return one === undefined || two === undefined || three === undefined
    ? undefined
    : [one, two, three];
}

/** A number as XML writes it: with a decimal point. */
function pointNumber(text: string): number | undefined {
  return text.includes(",") ? undefined : writtenNumber(text);
}
