/**
 * One invented reading of a red earth, 400-700 nm in steps of 10, as text so that
 * every file says exactly the same digits; and the files an instrument might make of it.
 */
export const INVENTED = [
  "0.0511",
  "0.0502",
  "0.0493",
  "0.0487",
  "0.0480",
  "0.0476",
  "0.0471",
  "0.0469",
  "0.0468",
  "0.0470",
  "0.0479",
  "0.0494",
  "0.0518",
  "0.0557",
  "0.0623",
  "0.0741",
  "0.0952",
  "0.1290",
  "0.1734",
  "0.2176",
  "0.2540",
  "0.2793",
  "0.2961",
  "0.3070",
  "0.3147",
  "0.3203",
  "0.3248",
  "0.3285",
  "0.3314",
  "0.334",
  "0.337",
] as const;

export const WAVELENGTHS = INVENTED.map((_, i) => String(400 + 10 * i));

/** Rows under a header; `changed` replaces whole lines, counted from 1 with the header. */
export function csvText(changed: Readonly<Record<number, string>> = {}, lineEnd = "\n"): string {
  const lines = ["nm,masstone", ...INVENTED.map((value, i) => `${400 + 10 * i},${value}`)];
  return lines.map((line, i) => changed[i + 1] ?? line).join(lineEnd) + lineEnd;
}

export interface CgatsParts {
  readonly header?: readonly string[];
  readonly fields: readonly string[];
  readonly sets: readonly (readonly string[])[];
  readonly fieldCount?: number;
  readonly setCount?: number;
}

/** Line 1 identifier, 2 ORIGINATOR, then `header`, count, three lines of format, count, BEGIN_DATA, the sets, END_DATA. */
export function cgatsText({
  header = [],
  fields,
  sets,
  fieldCount = fields.length,
  setCount = sets.length,
}: CgatsParts): string {
  return [
    "CGATS.17",
    'ORIGINATOR "Saltreach Colourworks, invented"',
    ...header,
    `NUMBER_OF_FIELDS ${fieldCount}`,
    "BEGIN_DATA_FORMAT",
    fields.join("\t"),
    "END_DATA_FORMAT",
    `NUMBER_OF_SETS ${setCount}`,
    "BEGIN_DATA",
    ...sets.map((set) => set.join("\t")),
    "END_DATA",
    "",
  ].join("\n");
}

export interface CxfParts {
  readonly objects: string;
  readonly specifications?: string;
  readonly prefix?: string;
}

/** Objects begin on line 7, after `<cc:ObjectCollection>`; each string may hold several lines. */
export function cxfText({ objects, specifications = specification() }: CxfParts): string {
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<cc:CxF xmlns:cc="http://colorexchangeformat.com/CxF3-core">',
    "<cc:FileInformation><cc:Creator>Saltreach Colourworks, invented</cc:Creator><cc:CreationDate>2026-03-02T09:00:00</cc:CreationDate></cc:FileInformation>",
    "<cc:Resources>",
    "<!-- invented -->",
    "<cc:ObjectCollection>",
    objects,
    "</cc:ObjectCollection>",
    `<cc:ColorSpecificationCollection>${specifications}</cc:ColorSpecificationCollection>`,
    "</cc:Resources>",
    "</cc:CxF>",
    "",
  ].join("\n");
}

export function specification(
  id = "s1",
  geometry = SINGLE_ANGLE,
  range = '<cc:WavelengthRange StartWL="400" Increment="10"/>',
): string {
  return (
    `<cc:ColorSpecification Id="${id}"><cc:TristimulusSpec><cc:Illuminant>D65</cc:Illuminant><cc:Observer>10_Degree</cc:Observer></cc:TristimulusSpec>` +
    `<cc:MeasurementSpec><cc:MeasurementType>Spectrum_Reflectance</cc:MeasurementType><cc:GeometryChoice>${geometry}</cc:GeometryChoice>${range}</cc:MeasurementSpec></cc:ColorSpecification>`
  );
}

export const SINGLE_ANGLE =
  "<cc:SingleAngle><cc:IlluminationAngle>45</cc:IlluminationAngle><cc:MeasurementAngle>0</cc:MeasurementAngle></cc:SingleAngle>";

export function cxfObject(
  name: string,
  values: readonly string[] = INVENTED,
  attributes = 'ColorSpecification="s1"',
): string {
  return `<cc:Object ObjectType="Standard" Name="${name}" Id="i-${name}">\n<cc:ColorValues>\n<cc:ReflectanceSpectrum ${attributes}>${values.join(" ")}</cc:ReflectanceSpectrum>\n</cc:ColorValues>\n</cc:Object>`;
}
