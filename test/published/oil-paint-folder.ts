/** All measured oil paints written down as a workshop would by the README alone, over both halves of its chart. */
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import { contentFolder, type RecordTexts } from "../support/content-folder.ts";
import { MEASURED_PAINTS, measuredPaint, type MeasuredPaint } from "./measured-paints.ts";

/** Colour Index name and family of each paint's pigment. Common practice, no source. */
const PIGMENTS: Readonly<Record<string, readonly [string, string]>> = {
  "eosin lake one": ["PR 90", "red"],
  "eosin lake two": ["PR 90", "red"],
  "eosin lake three": ["PR 90", "red"],
  cochineal: ["NR 4", "red"],
  "red lead": ["PR 105", "red"],
  vermilion: ["PR 106", "red"],
  "zinc white": ["PW 4", "white"],
  "lead white": ["PW 1", "white"],
  "viridian green": ["PG 18", "green"],
  "emerald green": ["PG 21", "green"],
  "ultramarine blue": ["PB 29", "blue"],
  "cobalt blue": ["PB 28", "blue"],
  "prussian blue": ["PB 27", "blue"],
  "chrome yellow": ["PY 34", "yellow"],
  "chrome yellow two": ["PY 34", "yellow"],
  "barium sulphate": ["PW 21", "extender"],
  "calcium carbonate": ["PW 18", "extender"],
  "bone black": ["PBk 9", "black"],
};
const WHITES = ["zinc white", "lead white", "barium sulphate", "calcium carbonate"];

const slug = (name: string): string => name.replaceAll(" ", "-");
const both = (id: string): string =>
  `reading: drawdowns, column: ${id} over white, overBlack: { reading: drawdowns, column: ${id} over black }`;

/** @param blackMasstone the drawdown that stands for bone black's own masstone, where one does. */
export function oilPaintFolder(blackMasstone?: string): ReturnType<typeof contentFolder> {
  return contentFolder(oilPaintRecords(blackMasstone));
}

/** The same as texts, by their path in the content folder. */
export function oilPaintRecords(blackMasstone?: string): RecordTexts {
  const paints = [...MEASURED_PAINTS.values()];
  const { chartBlack, chartWhite } = measuredPaint("07A");
  const columns = [
    ["chart black", chartBlack] as const,
    ["chart white", chartWhite] as const,
    ...paints.flatMap(({ id, overBlack, overWhite }) => [
      [`${id} over black`, overBlack] as const,
      [`${id} over white`, overWhite] as const,
    ]),
  ];
  const rows = wavelengthsNm(chartBlack.spectrum.grid).map((nm, i) =>
    [nm, ...columns.map(([, reading]) => reading.spectrum.values[i])].join(","),
  );
  return {
    "workshop.yaml": `name: A workshop
readings: { scale: factor, geometry: d/8 included }
vehicle: linseed-oil
strengthReference: bone-black
grounds: { black: { reading: drawdowns, column: chart black }, white: { reading: drawdowns, column: chart white } }
`,
    "vehicles/linseed-oil.yaml": "name: Linseed oil\nkind: oil\noil: linseed\n",
    "readings/drawdowns.csv": `${[["nm", ...columns.map(([name]) => name)].join(","), ...rows].join("\n")}\n`,
    ...Object.fromEntries(
      Object.entries(PIGMENTS).flatMap(([name, [colourIndexName, family]]) => [
        [
          `pigments/${slug(name)}.yaml`,
          `name: ${name}\ncolourIndexName: ${colourIndexName}\nfamily: ${family}\n`,
        ],
        [`colours/${slug(name)}.md`, colourOf(name, paints, blackMasstone)],
      ]),
    ),
    ...Object.fromEntries(
      paints
        .filter(isWithoutWhite)
        .map((paint) => [`colours/mixture-${paint.id.toLowerCase()}.md`, mixtureOf(paint)]),
    ),
  };
}

function isWithoutWhite({ parts }: MeasuredPaint): boolean {
  return parts.size === 2 && [...parts.keys()].every((name) => !WHITES.includes(name));
}

function colourOf(name: string, paints: readonly MeasuredPaint[], blackMasstone?: string): string {
  const alone = paints.find(({ parts }) => parts.size === 1 && parts.has(name))?.id;
  const masstone = name === "bone black" ? blackMasstone : alone;
  const letDowns = paints.flatMap(({ id, parts }) => {
    const white = WHITES.find((one) => parts.has(one));
    if (WHITES.includes(name) || !parts.has(name) || white === undefined || id === masstone)
      return [];
    const percent = (of: string): string => (100 * (parts.get(of) ?? NaN)).toFixed(2);
    return [
      `  - { white: ${slug(white)}, massRatio: "${percent(name)}:${percent(white)}", ratioKind: paint, ${both(id)} }`,
    ];
  });
  return [
    "---",
    `name: ${name}`,
    `pigments: [{ pigment: ${slug(name)} }]`,
    ...(masstone === undefined ? [] : [`masstone: { ${both(masstone)} }`]),
    ...(letDowns.length === 0 ? [] : ["tints:", ...letDowns]),
    "---",
    "",
  ].join("\n");
}

function mixtureOf({ id, parts }: MeasuredPaint): string {
  const pigments = [...parts].map(
    ([name, share]) => `{ pigment: ${slug(name)}, paintParts: ${(100 * share).toFixed(1)} }`,
  );
  return `---\nname: Mixture ${id}\npigments: [${pigments.join(", ")}]\nmasstone: { ${both(id)} }\n---\n`;
}
