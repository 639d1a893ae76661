import type { Geometry } from "./film-surface.ts";

/** Named columns of reflectance factors on one grid, as an instrument's program would save them. */
export interface ReadingTable {
  readonly wavelengthsNm: readonly number[];
  readonly columns: readonly { readonly name: string; readonly values: readonly number[] }[];
  readonly geometry: Geometry;
}

const ORIGIN =
  "Saltreach Colourworks (invented): readings made by test/demonstration/invented-readings.ts";
const CREATED = "2026-05-18";

/** Plain table: a row a wavelength. */
export function csvText(
  { wavelengthsNm, columns }: ReadingTable,
  scale: "factor" | "percent",
): string {
  const figure =
    scale === "percent"
      ? (value: number) => (value * 100).toFixed(3)
      : (value: number) => value.toFixed(5);
  const rows = wavelengthsNm.map((nm, i) => [
    String(nm),
    ...columns.map(({ values }) => figure(values[i] ?? NaN)),
  ]);
  return [["nm", ...columns.map(({ name }) => name)], ...rows]
    .map((row) => row.join(",") + "\n")
    .join("");
}

/** CGATS.17 text: a set a reading, pairs of wavelength and factor. */
export function cgatsText({ wavelengthsNm, columns, geometry }: ReadingTable): string {
  const fields = [
    "SAMPLE_ID",
    "SAMPLE_NAME",
    ...wavelengthsNm.flatMap(() => ["SPECTRAL_NM", "SPECTRAL_DEC"]),
  ];
  const sets = columns.map(({ name, values }, i) =>
    [
      String(i + 1),
      `"${name}"`,
      ...wavelengthsNm.flatMap((nm, j) => [String(nm), (values[j] ?? NaN).toFixed(5)]),
    ].join("\t"),
  );
  return [
    "CGATS.17",
    "",
    `ORIGINATOR\t"${ORIGIN}"`,
    `CREATED\t"${CREATED}"`,
    `MEASUREMENT_GEOMETRY\t"${geometry}"`,
    'MEASUREMENT_SOURCE\t"invented"',
    "",
    `NUMBER_OF_FIELDS\t${fields.length}`,
    "BEGIN_DATA_FORMAT",
    fields.join("\t"),
    "END_DATA_FORMAT",
    "",
    `NUMBER_OF_SETS\t${sets.length}`,
    "BEGIN_DATA",
    ...sets,
    "END_DATA",
    "",
  ].join("\n");
}

/** CxF3: an object a reading, its spectrum as factors. */
export function cxfText({ wavelengthsNm, columns, geometry }: ReadingTable): string {
  const start = wavelengthsNm[0] ?? NaN;
  const increment = (wavelengthsNm[1] ?? NaN) - start;
  const objects = columns.map(
    ({ name, values }, i) => `      <cc:Object ObjectType="Standard" Name="${name}" Id="r${i + 1}">
        <cc:CreationDate>${CREATED}T09:00:00Z</cc:CreationDate>
        <cc:ColorValues>
          <cc:ReflectanceSpectrum ColorSpecification="cs1" StartWL="${start}">${values.map((value) => value.toFixed(5)).join(" ")}</cc:ReflectanceSpectrum>
        </cc:ColorValues>
      </cc:Object>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<cc:CxF xmlns:cc="http://colorexchangeformat.com/CxF3-core">
  <cc:FileInformation>
    <cc:Creator>${ORIGIN}</cc:Creator>
    <cc:CreationDate>${CREATED}T09:00:00Z</cc:CreationDate>
    <cc:Description>Invented readings</cc:Description>
  </cc:FileInformation>
  <cc:Resources>
    <cc:ObjectCollection>
${objects.join("\n")}
    </cc:ObjectCollection>
    <cc:ColorSpecificationCollection>
      <cc:ColorSpecification Id="cs1">
        <cc:MeasurementSpec>
          <cc:MeasurementType>Spectrum_Reflectance</cc:MeasurementType>
          <cc:GeometryChoice>
${geometryXml(geometry)}
          </cc:GeometryChoice>
          <cc:WavelengthRange StartWL="${start}" Increment="${increment}"/>
          <cc:Device>
            <cc:Model>invented</cc:Model>
          </cc:Device>
        </cc:MeasurementSpec>
      </cc:ColorSpecification>
    </cc:ColorSpecificationCollection>
  </cc:Resources>
</cc:CxF>
`;
}

function geometryXml(geometry: Geometry): string {
  if (geometry === "45/0") {
    return `            <cc:SingleAngle>
              <cc:SingleAngleConfiguration>Annular</cc:SingleAngleConfiguration>
              <cc:IlluminationAngle>45</cc:IlluminationAngle>
              <cc:MeasurementAngle>0</cc:MeasurementAngle>
            </cc:SingleAngle>`;
  }
  return `            <cc:SphereGeometry>Specular_${geometry === "d/8 included" ? "Included" : "Excluded"}</cc:SphereGeometry>`;
}
