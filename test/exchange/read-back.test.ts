import { XMLParser } from "fast-xml-parser";
import { describe, expect, test } from "vitest";
import { cgatsText } from "../../lib/exchange/cgats-text.ts";
import { colourSamples, type ColourSample } from "../../lib/exchange/colour-sample.ts";
import { cxfText } from "../../lib/exchange/cxf-text.ts";
import { parseReadingFile } from "../../lib/records/readings/reading-file.ts";
import { RECORDS } from "../support/demonstration.ts";

const NAMES = (slug: string): string => RECORDS.colours.get(slug)?.record.name ?? slug;
const FROM_RANGE = [...RECORDS.colours.values()].flatMap((colour) => colourSamples(colour, NAMES));
const HARD: readonly ColourSample[] = [
  {
    name: `Ochre "A" & <B> 1:5`,
    reading: {
      form: "lab",
      lab: { L: 21.4, a: 25.5, b: -24.9 },
      viewing: "D65/10",
      geometry: "45/0",
      origin: "hand",
    },
  },
];
const SAMPLES = [...FROM_RANGE, ...HARD];
const HEAD = { creator: "A & B", description: "range <all>", date: "2026-05-01" };
const CXF = cxfText(SAMPLES, HEAD);
const CGATS = cgatsText(SAMPLES, HEAD);

test("the demonstration gives many masstones and tints, in more than one geometry", () => {
  expect(FROM_RANGE.length).toBeGreaterThan(100);
  expect(new Set(SAMPLES.map(({ reading }) => reading.geometry)).size).toBeGreaterThan(1);
});

describe.each([
  ["CxF3", "range.cxf", CXF],
  ["CGATS.17", "range.txt", CGATS],
])("%s, by our own reader", (format, file, text) => {
  const { reading, diagnostics } = parseReadingFile(file, text);

  test("is read without a complaint, every sample of it", () => {
    expect(diagnostics).toEqual([]);
    expect(reading?.format).toBe(format);
    expect(reading?.columns.size).toBe(SAMPLES.length);
  });

  test("each spectrum, L*a*b* and geometry is what went out", () => {
    for (const { name, reading: out } of SAMPLES) {
      const column =
        reading?.columns.get(name) ?? reading?.columns.get(name.replaceAll('"', " ")) ?? undefined;
      expect(column?.geometry, name).toBe(out.geometry);
      if (out.form === "lab") {
        const [illuminant, observer] = out.viewing.split("/");
        expect(column?.lab).toEqual({ ...out.lab, illuminant, observer: Number(observer) });
      } else {
        expect(column?.declaredScale).toBe("factor");
        expect(column?.grid, name).toEqual(out.spectrum.grid);
        out.spectrum.values.forEach((value, i) =>
          expect(column?.values[i], name).toBeCloseTo(value, 6),
        );
      }
    }
  });
});

/**
 * basis: published. CxF3 (ISO 17972-1): document element CxF in the namespace of the core, FileInformation and Resources,
 * Objects with ColorValues, specifications named by Id. Read by a general XML parser and these few lines.
 */
describe("CxF3, by another parser", () => {
  interface CxfObject {
    readonly "@Name": string;
    readonly "@Id": string;
    readonly "@ObjectType": string;
    readonly CreationDate: string;
    readonly ColorValues: {
      readonly ReflectanceSpectrum?: {
        readonly "@StartWL": string;
        readonly "@ColorSpecification": string;
        readonly "#text": string;
      };
      readonly ColorCIELab?: {
        readonly "@ColorSpecification": string;
        readonly L: string;
        readonly A: string;
        readonly B: string;
      };
    };
  }
  interface Document {
    readonly CxF: {
      readonly "@xmlns:cc": string;
      readonly FileInformation: { readonly Creator: string; readonly Description: string };
      readonly Resources: {
        readonly ObjectCollection: { readonly Object: readonly CxfObject[] };
        readonly ColorSpecificationCollection: {
          readonly ColorSpecification: readonly {
            readonly "@Id": string;
            readonly MeasurementSpec: {
              readonly WavelengthRange?: { readonly "@Increment": string };
            };
          }[];
        };
      };
    };
  }
  const document = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "@",
    removeNSPrefix: true,
    parseTagValue: false,
    isArray: (name) => name === "Object" || name === "ColorSpecification",
  }).parse(CXF) as Document;
  const { Resources, FileInformation } = document.CxF;
  const objects = Resources.ObjectCollection.Object;
  const steps = new Map(
    Resources.ColorSpecificationCollection.ColorSpecification.map((one) => [
      one["@Id"],
      one.MeasurementSpec.WavelengthRange?.["@Increment"],
    ]),
  );

  // basis: published. The schema of the core, version 3.0.018: GeometryChoiceType, ESphereType, SingleAngleType, TristimulusSpec.
  test("has geometries and viewings in the form of the schema", () => {
    const choices = [...CXF.matchAll(/<cc:GeometryChoice>(.*?)<\/cc:GeometryChoice>/g)];
    expect(choices.length).toBeGreaterThan(2);
    for (const [, choice = ""] of choices)
      expect(choice).toMatch(
        /^<cc:SphereGeometry>Specular_(?:Included|Excluded)<\/cc:SphereGeometry>$|^<cc:SingleAngle><cc:SingleAngleConfiguration>Annular<\/cc:SingleAngleConfiguration><cc:IlluminationAngle>45<\/cc:IlluminationAngle><cc:MeasurementAngle>0<\/cc:MeasurementAngle><\/cc:SingleAngle>$/,
      );
    for (const [, viewing = ""] of CXF.matchAll(/<cc:TristimulusSpec>(.*?)<\/cc:TristimulusSpec>/g))
      expect(viewing).toMatch(
        /^<cc:Illuminant>(?:A|C|D50|D65)<\/cc:Illuminant><cc:Observer>(?:2|10)_Degree<\/cc:Observer><cc:Method>unknown<\/cc:Method>$/,
      );
  });

  test("is in the namespace of the core", () => {
    expect(CXF).toContain(`<cc:CxF xmlns:cc="http://colorexchangeformat.com/CxF3-core">`);
    expect(FileInformation).toMatchObject({ Creator: "A & B", Description: "range <all>" });
  });

  test("has each sample once, under an Id of its own and a specification that is there", () => {
    expect(objects.map((one) => one["@Name"])).toEqual(SAMPLES.map(({ name }) => name));
    expect(new Set(objects.map((one) => one["@Id"])).size).toBe(SAMPLES.length);
    for (const { ColorValues: values } of objects)
      expect(
        steps.has(
          (values.ReflectanceSpectrum ?? values.ColorCIELab)?.["@ColorSpecification"] ?? "",
        ),
      ).toBe(true);
  });

  test("has the factors that were read, at the wavelengths of their grid", () => {
    objects.forEach(({ ColorValues: { ReflectanceSpectrum: spectrum, ColorCIELab: lab } }, i) => {
      const { reading } = SAMPLES[i] as ColourSample;
      if (reading.form === "lab") {
        expect([lab?.L, lab?.A, lab?.B].map(Number)).toEqual([
          reading.lab.L,
          reading.lab.a,
          reading.lab.b,
        ]);
        return;
      }
      expect(Number(spectrum?.["@StartWL"])).toBe(reading.spectrum.grid.startNm);
      expect(Number(steps.get(spectrum?.["@ColorSpecification"] ?? ""))).toBe(
        reading.spectrum.grid.stepNm,
      );
      const factors = spectrum?.["#text"].split(" ").map(Number) ?? [];
      expect(factors).toHaveLength(reading.spectrum.values.length);
      factors.forEach((factor, k) =>
        expect(factor).toBeCloseTo(reading.spectrum.values[k] ?? NaN, 6),
      );
    });
  });
});

// basis: published. CGATS.17 / ISO 28178: counts of fields and sets are those that follow; read here line by line.
test("CGATS.17, by another reading: counts agree with what follows, factors with what was read", () => {
  const tables = CGATS.split(/^CGATS\.17$/m).slice(1);
  const rows = tables.flatMap((table) => {
    const count = (keyword: string): number =>
      Number(new RegExp(`^${keyword}\\t(\\d+)$`, "m").exec(table)?.[1]);
    const fields = /BEGIN_DATA_FORMAT\n(.*)\nEND_DATA_FORMAT/.exec(table)?.[1]?.split("\t") ?? [];
    const sets = (/BEGIN_DATA\n([\s\S]*?)\nEND_DATA$/m.exec(table)?.[1] ?? "")
      .split("\n")
      .map((line) => line.split("\t"));
    expect(count("NUMBER_OF_FIELDS")).toBe(fields.length);
    expect(count("NUMBER_OF_SETS")).toBe(sets.length);
    for (const set of sets) expect(set).toHaveLength(fields.length);
    return sets;
  });
  expect(rows).toHaveLength(SAMPLES.length);
  for (const [id, , ...cells] of rows) {
    const { reading } = SAMPLES[Number(id) - 1] as ColourSample;
    if (reading.form === "spectrum")
      expect(Number(cells[1])).toBeCloseTo(reading.spectrum.values[0] ?? NaN, 6);
  }
});
