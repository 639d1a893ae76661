import { describe, expect, test } from "vitest";
import { cellIn } from "../../../lib/records/readings/reading-column.ts";
import { checkFaults, columnOf, soundReading } from "./reading-faults.ts";
import { cxfObject, cxfText, INVENTED, SINGLE_ANGLE, specification } from "./invented-reading.ts";

// Elements and attributes: CxF3 / ISO 17972-1, as instruments write them.

const file = "content/readings/red-earth.cxf";
const NUMBERS = INVENTED.map(Number);
const plain = cxfText({ objects: cxfObject("red earth") });

describe("a CxF reading", () => {
  test("gives grid, values, scale, geometry and places", () => {
    const reading = soundReading(file, plain);
    const column = columnOf(reading, "red earth");
    expect(reading.format).toBe("CxF3");
    expect(column.grid).toEqual({ startNm: 400, stepNm: 10, count: 31 });
    expect(column.values).toEqual(NUMBERS);
    expect(column.declaredScale).toBe("factor");
    expect(column.geometry).toBe("45/0");
    expect(column.at).toEqual({ line: 7, column: 40 });
    expect(cellIn(column.places, 0)).toEqual({ text: "0.0511", line: 9, column: 49 });
    expect(cellIn(column.places, 1)).toEqual({ text: "0.0502", line: 9, column: 56 });
    expect(reading.notes).toEqual({
      originator: "Saltreach Colourworks, invented",
      date: "2026-03-02T09:00:00",
      geometry: "SingleAngle 45 0",
    });
  });

  test.each([
    ["ns:", 'xmlns:ns="'],
    ["", 'xmlns="'],
  ])("takes any prefix: %j", (prefix, declaration) => {
    const text = plain.replace('xmlns:cc="', declaration).replaceAll("cc:", prefix);
    expect(columnOf(soundReading(file, text), "red earth").values).toEqual(NUMBERS);
  });

  test.each([["\r\n"], ["\r"]])(
    "reads lines that end with %j, and a byte order mark",
    (lineEnd) => {
      const column = columnOf(
        soundReading(file, "\uFEFF" + plain.replaceAll("\n", lineEnd)),
        "red earth",
      );
      expect(column.values).toEqual(NUMBERS);
      expect(cellIn(column.places, 0)).toEqual({ text: "0.0511", line: 9, column: 49 });
    },
  );

  test("needs no blanks between elements", () => {
    const column = columnOf(soundReading(file, plain.replace(/>\s+</g, "><")), "red earth");
    expect(column.values).toEqual(NUMBERS);
    expect(cellIn(column.places, 30)?.text).toBe("0.337");
  });

  test("passes over comments and line breaks among the values, and CDATA marks", () => {
    const text = plain
      .replace("0.0502", "\n  0.0502 <!-- 9.9 -->")
      .replace("0.0493", "<![CDATA[0.0493]]>");
    const column = columnOf(soundReading(file, text), "red earth");
    expect(column.values).toEqual(NUMBERS);
    expect(cellIn(column.places, 1)).toEqual({ text: "0.0502", line: 10, column: 3 });
  });

  test("passes over other namespaces, custom resources and device values", () => {
    const text = cxfText({
      objects: `<x:Object xmlns:x="urn:x"/>${cxfObject("red earth")}<cc:Object Name="printer" Id="p"><cc:DeviceColorValues><cc:ColorCMYK/></cc:DeviceColorValues></cc:Object>`,
    }).replace(
      "</cc:CxF>",
      "<cc:CustomResources><cc:Resources><cc:ObjectCollection/></cc:Resources></cc:CustomResources></cc:CxF>",
    );
    expect([...soundReading(file, text).columns.keys()]).toEqual(["red earth"]);
  });

  test("passes over all that lies in an element of another namespace, and its attributes", () => {
    const foreign = '<x:Resources xmlns:x="urn:x"><x:a/><cc:ObjectCollection/></x:Resources>';
    const text = plain
      .replace("<cc:Resources>", `${foreign}<cc:Resources>`)
      .replace('Name="red earth"', 'Name="red earth" x:Name="other" xmlns:x="urn:x"');
    expect([...soundReading(file, text).columns.keys()]).toEqual(["red earth"]);
  });

  test("start and increment may stand on the spectrum", () => {
    const text = cxfText({
      objects: cxfObject("red earth", INVENTED, 'StartWL="400" Increment="10"'),
      specifications: "",
    });
    expect(columnOf(soundReading(file, text), "red earth").grid).toEqual({
      startNm: 400,
      stepNm: 10,
      count: 31,
    });
  });

  test("start and increment may stand on both and agree", () => {
    const text = cxfText({
      objects: cxfObject(
        "red earth",
        INVENTED,
        'ColorSpecification="s1" StartWL="400.0" Increment="10"',
      ),
    });
    expect(columnOf(soundReading(file, text), "red earth").grid).toEqual({
      startNm: 400,
      stepNm: 10,
      count: 31,
    });
  });

  test("an object with gloss included and excluded gives two readings, each with its geometry", () => {
    const object = cxfObject("black", ["0.05"]).replace(
      /<cc:ReflectanceSpectrum.*/,
      (spectrum) => `${spectrum.replace("s1", "in")}\n${spectrum.replace("s1", "ex")}`,
    );
    const sphere = (mode: string): string =>
      `<cc:Sphere><cc:SpecularComponent>${mode}</cc:SpecularComponent></cc:Sphere>`;
    const reading = soundReading(
      file,
      cxfText({
        objects: object,
        specifications:
          specification("in", sphere("Included")) + specification("ex", sphere("Excluded")),
      }),
    );
    expect([...reading.columns].map(([name, { geometry }]) => [name, geometry])).toEqual([
      ["black (in)", "d/8 included"],
      ["black (ex)", "d/8 excluded"],
    ]);
  });

  test.each([
    // basis: published, the schema of the CxF3 core, version 3.0.018: ESphereType.
    ["<cc:SphereGeometry>Specular_Included</cc:SphereGeometry>", "d/8 included"],
    ["<cc:SphereGeometry>Specular_Excluded</cc:SphereGeometry>", "d/8 excluded"],
    ["<cc:Sphere><cc:SpecularIncluded>false</cc:SpecularIncluded></cc:Sphere>", "d/8 excluded"],
    ["<cc:Sphere><cc:SpecularIncluded>true</cc:SpecularIncluded></cc:Sphere>", "d/8 included"],
    ["<cc:Sphere><cc:SpecularExcluded>0</cc:SpecularExcluded></cc:Sphere>", "d/8 included"],
    ['<cc:Sphere Specular="Specular_Included"/>', "d/8 included"],
    ['<cc:Sphere Mode="specular_SCE"/>', "d/8 excluded"],
    ["<cc:Sphere><cc:Diameter>150</cc:Diameter></cc:Sphere>", "d/8"],
    [
      SINGLE_ANGLE.replace(">45<", ">0<").replace("MeasurementAngle>0<", "MeasurementAngle>45<"),
      "45/0",
    ],
    [SINGLE_ANGLE.replace(">0<", ">15<"), "other"],
    ["<cc:MultiAngle/>", "other"],
    ["<cc:SingleAngle/>", undefined],
    ["", undefined],
  ])("geometry %s is %s", (geometry, expected) => {
    const text = cxfText({
      objects: cxfObject("red earth"),
      specifications: specification("s1", geometry),
    });
    expect(columnOf(soundReading(file, text), "red earth").geometry).toBe(expected);
  });

  test("a decimal comma is no number in XML", () => {
    const column = columnOf(soundReading(file, plain.replace("0.0511", "0,0511")), "red earth");
    expect(column.values.slice(0, 2)).toEqual([NaN, 0.0502]);
  });

  test("Lab and XYZ carry illuminant and observer", () => {
    const lab =
      '<cc:ColorCIELab ColorSpecification="s1"><cc:L>30.5</cc:L><cc:A>-1.25</cc:A><cc:B>2</cc:B></cc:ColorCIELab>';
    const xyz = "<cc:ColorCIEXYZ><cc:X>6.1</cc:X><cc:Y>6.3</cc:Y><cc:Z>5</cc:Z></cc:ColorCIEXYZ>";
    const column = columnOf(
      soundReading(
        file,
        cxfText({
          objects: `<cc:Object Name="chip" Id="1"><cc:ColorValues>${lab}${xyz}</cc:ColorValues></cc:Object>`,
        }),
      ),
      "chip",
    );
    expect(column.grid).toBeUndefined();
    expect(column.lab).toEqual({ L: 30.5, a: -1.25, b: 2, illuminant: "D65", observer: 10 });
    expect(column.xyz).toEqual({ X: 6.1, Y: 6.3, Z: 5 });
  });
});

describe("faults of a CxF document", () => {
  const at = (place: string): string => `${file}:${place}`;
  const spectrum = (attributes: string, values: readonly string[] = INVENTED): string =>
    cxfText({ objects: cxfObject("red earth", values, attributes) });
  checkFaults([
    {
      what: "a document type",
      file,
      text: plain.replace("?>\n", '?>\n<!DOCTYPE CxF [<!ENTITY a "0.5">]>\n'),
      told: at("2:1 error A document type declaration is not read readings/doctype"),
    },
    {
      what: "an external document type",
      file,
      text: plain.replace("?>\n", '?>\n<!DOCTYPE CxF SYSTEM "file:///etc/hostname">\n'),
      told: at("2:1 error A document type declaration is not read readings/doctype"),
    },
    {
      what: "an entity of its own",
      file,
      text: plain.replace("0.0511", "&a;"),
      told: at(
        "9:51 error The XML is broken: & begins the name of a letter, and no such name is known; a plain & is written &amp; readings/xml",
      ),
    },
    {
      what: "a document that is cut",
      file,
      text: plain.slice(0, plain.indexOf("</cc:Object>")),
      told: at("11:1 error The XML is broken: cc:Object is not closed readings/xml"),
    },
    {
      what: "a prefix that is not declared",
      file,
      text: plain.replace("xmlns:cc", "xmlns:dd"),
      told: at('2:60 error The XML is broken: unbound namespace prefix: "cc" readings/xml'),
    },
    {
      what: "undue depth",
      file,
      text: plain.replace("<!-- invented -->", "<cc:a>".repeat(39) + "</cc:a>".repeat(39)),
      told: at("5:229 error Elements stand more than 40 deep readings/xml-depth"),
    },
    {
      what: "another root",
      file,
      text: '<cc:Chart xmlns:cc="http://colorexchangeformat.com/CxF3-core"/>',
      told: at(
        "1:1 error The document begins with Chart, and a CxF document with CxF readings/cxf-root",
      ),
    },
    {
      what: "another namespace",
      file,
      text: '<CxF xmlns="urn:other"/>',
      told: at(
        "1:1 error The document begins with CxF of the namespace urn:other, and a CxF document with CxF of http://colorexchangeformat.com/CxF3-core readings/cxf-root",
      ),
    },
    {
      what: "no measured object",
      file,
      text: cxfText({ objects: "" }),
      told: at(
        "2:1 error The document holds no measured object: one has ReflectanceSpectrum, ColorCIELab or ColorCIEXYZ readings/no-reading",
      ),
    },
    {
      what: "a start that disagrees",
      file,
      text: spectrum('ColorSpecification="s1" StartWL="380"'),
      told: at(
        "9:58 error The StartWL is 380, and its ColorSpecification says 400 on line 13 readings/cxf-wavelengths",
      ),
    },
    {
      what: "an increment that disagrees",
      file,
      text: spectrum('ColorSpecification="s1" Increment="20"'),
      told: at(
        "9:60 error The Increment is 20, and its ColorSpecification says 10 on line 13 readings/cxf-wavelengths",
      ),
    },
    {
      what: "no increment",
      file,
      text: spectrum('StartWL="400"'),
      told: at(
        "9:1 error The ReflectanceSpectrum of red earth has no Increment, on itself or on its ColorSpecification readings/cxf-wavelengths",
      ),
    },
    {
      what: "an increment of nothing",
      file,
      text: spectrum('StartWL="400" Increment="0"'),
      told: at("9:50 error The Increment is 0, and can be 1 to 20 nm readings/wavelength-step"),
    },
    {
      what: "a start that is no wavelength",
      file,
      text: spectrum('StartWL="blue" Increment="10"'),
      told: at(
        '9:34 error "blue" is no wavelength: that is a number of nm, 100 to 4000 readings/wavelength',
      ),
    },
    {
      what: "a specification that is not there",
      file,
      text: spectrum('ColorSpecification="spec-1" StartWL="400" Increment="10"').replace(
        'Id="s1"',
        'Id="spec1"',
      ),
      told: at(
        "9:45 error No ColorSpecification of this file has the Id spec-1; nearest: spec1 readings/cxf-specification",
      ),
    },
    {
      what: "a specification twice",
      file,
      text: cxfText({
        objects: cxfObject("red earth"),
        specifications: `${specification()}\n${specification()}`,
      }),
      told: at("14:28 error Two ColorSpecifications have the Id s1 readings/cxf-specification"),
    },
    {
      what: "a specification without Id",
      file,
      text: cxfText({
        objects: cxfObject("red earth"),
        specifications: `${specification()}\n<cc:ColorSpecification/>`,
      }),
      told: at("14:1 error A ColorSpecification has no Id readings/cxf-specification"),
    },
    {
      what: "a spectrum without values",
      file,
      text: spectrum('ColorSpecification="s1"', []),
      told: at(
        "9:49 error The ReflectanceSpectrum of red earth is empty: values stand in it separated by blanks readings/empty-cell",
      ),
    },
    {
      what: "names and Ids twice",
      file,
      text: cxfText({ objects: `${cxfObject("red earth")}\n${cxfObject("red earth")}` }),
      told: at("12:40 error The sample i-red earth comes twice readings/duplicated-column"),
    },
    {
      what: "a Lab that is no number",
      file,
      text: plain.replace(
        "</cc:ColorValues>",
        "<cc:ColorCIELab><cc:L>30</cc:L><cc:A>n/a</cc:A><cc:B>1</cc:B></cc:ColorCIELab></cc:ColorValues>",
      ),
      told: at('10:38 warning A of ColorCIELab is "n/a", no number readings/not-a-number'),
    },
  ]);
});
