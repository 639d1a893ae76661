import { escapedMarkup } from "./escaped-markup.ts";
import { given } from "../quantities/given.ts";
import type { LabReading, SpectrumReading } from "../records/records.ts";
import type { Geometry } from "../records/schema/terms.ts";
import { factorText, type ColourSample } from "./colour-sample.ts";

/** Whose file it is. */
export interface ExchangeHead {
  readonly creator: string;
  readonly description: string;
  /** YYYY-MM-DD; CxF asks for one, and an undated file says the first day of its own format. */
  readonly date: string | undefined;
}

const UNDATED = "1970-01-01";

/**
 * Samples as a CxF3 document: spectra as factors under their measuring geometry, L*a*b* under its illuminant and observer too.
 * Document element, namespace, names of elements and their order are those of the schema of the core, version 3.0.018 (ISO 17972-1).
 */
export function cxfText(samples: readonly ColourSample[], head: ExchangeHead): string {
  const specifications = new Map<string, string>();
  const idOf = (reading: SpectrumReading | LabReading): string => {
    const text = specification(reading);
    const known = specifications.get(text) ?? `cs${specifications.size + 1}`;
    specifications.set(text, known);
    return known;
  };
  const time = `${head.date ?? UNDATED}T00:00:00Z`;
  const objects = samples.map(
    (
      { name, reading },
      i,
    ) => `   <cc:Object ObjectType="Standard" Name="${escapedMarkup(name)}" Id="c${i + 1}">
    <cc:CreationDate>${reading.date === undefined ? time : `${reading.date}T00:00:00Z`}</cc:CreationDate>
    <cc:ColorValues>
     ${colourValues(reading, idOf(reading))}
    </cc:ColorValues>
   </cc:Object>
`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<cc:CxF xmlns:cc="http://colorexchangeformat.com/CxF3-core">
 <cc:FileInformation>
  <cc:Creator>${escapedMarkup(head.creator)}</cc:Creator>
  <cc:CreationDate>${time}</cc:CreationDate>
  <cc:Description>${escapedMarkup(head.description)}</cc:Description>
 </cc:FileInformation>
 <cc:Resources>
  <cc:ObjectCollection>
${objects.join("")}  </cc:ObjectCollection>
  <cc:ColorSpecificationCollection>
${[...specifications].map(([text, id]) => `   <cc:ColorSpecification Id="${id}">\n${text}   </cc:ColorSpecification>\n`).join("")}  </cc:ColorSpecificationCollection>
 </cc:Resources>
</cc:CxF>
`;
}

function colourValues(reading: SpectrumReading | LabReading, id: string): string {
  if (reading.form === "lab") {
    const { L, a, b } = reading.lab;
    return `<cc:ColorCIELab ColorSpecification="${id}"><cc:L>${L}</cc:L><cc:A>${a}</cc:A><cc:B>${b}</cc:B></cc:ColorCIELab>`;
  }
  const { grid, values } = reading.spectrum;
  return `<cc:ReflectanceSpectrum ColorSpecification="${id}" StartWL="${grid.startNm}">${values.map(factorText).join(" ")}</cc:ReflectanceSpectrum>`;
}

function specification(reading: SpectrumReading | LabReading): string {
  const isSpectrum = reading.form === "spectrum";
  const [illuminant = "", observer = ""] = isSpectrum ? [] : reading.viewing.split("/");
  return given([
    !isSpectrum &&
      `    <cc:TristimulusSpec><cc:Illuminant>${illuminant}</cc:Illuminant><cc:Observer>${observer}_Degree</cc:Observer><cc:Method>unknown</cc:Method></cc:TristimulusSpec>\n`,
    "    <cc:MeasurementSpec>\n",
    `     <cc:MeasurementType>${isSpectrum ? "Spectrum_Reflectance" : "Colorimetric_Reflectance"}</cc:MeasurementType>\n`,
    `     <cc:GeometryChoice>${GEOMETRIES[reading.geometry]}</cc:GeometryChoice>\n`,
    isSpectrum &&
      `     <cc:WavelengthRange StartWL="${reading.spectrum.grid.startNm}" Increment="${reading.spectrum.grid.stepNm}"/>\n`,
    "    </cc:MeasurementSpec>\n",
  ]).join("");
}

/**
 * The schema asks whether light comes from all round or from one side, which no record says: of the instruments of a
 * workshop the first. Common practice, no source.
 */
const GEOMETRIES: Readonly<Record<Geometry, string>> = {
  "45/0":
    "<cc:SingleAngle><cc:SingleAngleConfiguration>Annular</cc:SingleAngleConfiguration><cc:IlluminationAngle>45</cc:IlluminationAngle><cc:MeasurementAngle>0</cc:MeasurementAngle></cc:SingleAngle>",
  "d/8 included": "<cc:SphereGeometry>Specular_Included</cc:SphereGeometry>",
  "d/8 excluded": "<cc:SphereGeometry>Specular_Excluded</cc:SphereGeometry>",
};
