/**
 * The demonstration's lots, invented as its readings are: twenty over two years for six colours.
 *
 *     node --import tsx test/demonstration/invented-lots.ts [--out DIR]
 *
 * writes content/lots/ and the readings of lots in content/readings/. A lot is the paint of
 * invented-paints.ts with its let-down stronger or weaker by a factor; replicates scatter by the
 * bench. Ultramarine loses strength lot after lot, one iron oxide black is weak, and the let-down of
 * one bone black went into zinc white. The lot that a colour's own readings describe is the standard.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { trueReflectance } from "./drawdown-reflectance.ts";
import { type PaintKey, INVENTED_PAINTS } from "./invented-paints.ts";
import { csvText } from "./reading-files.ts";
import { deviates } from "./seeded-noise.ts";

interface InventedLot {
  readonly number: string;
  readonly date: string;
  /** Tinting strength beside the standard [1]. */
  readonly strength: number;
  /** The white that the let-down really went into, where it is not the one written down. */
  readonly really?: PaintKey;
  readonly note?: string;
}

interface LotsOfColour {
  readonly pigment: string;
  readonly vehicle: string;
  readonly addition?: { readonly vehicle: string; readonly percentOfOil: number };
  readonly dispersion: "milled" | "mulled";
  readonly finenessUm?: number;
  readonly pigmentG: number;
  /** Of the paint, g/cm3. */
  readonly density: number;
  /** Parts of titanium white to one of the colour. */
  readonly parts: number;
  readonly standard: {
    readonly number: string;
    readonly date: string;
    readonly masstone: string;
    readonly scale?: "percent";
  };
  readonly lots: readonly InventedLot[];
}

export const INVENTED_LOTS: Partial<Record<PaintKey, LotsOfColour>> = {
  "ultramarine-blue": {
    pigment: "ultramarine",
    vehicle: "safflower",
    dispersion: "milled",
    finenessUm: 20,
    pigmentG: 1500,
    density: 1.63,
    parts: 10,
    standard: { number: "UB-2603", date: "2026-03-03", masstone: "masstone" },
    lots: [
      { number: "UB-2407", date: "2024-07-09", strength: 1.046 },
      { number: "UB-2411", date: "2024-11-19", strength: 1.035 },
      { number: "UB-2504", date: "2025-04-08", strength: 1.023 },
      { number: "UB-2509", date: "2025-09-16", strength: 1.012 },
      { number: "UB-2606", date: "2026-06-04", strength: 0.975 },
    ],
  },
  "iron-oxide-black": {
    pigment: "black-iron-oxide",
    vehicle: "linseed-cold-pressed",
    dispersion: "milled",
    finenessUm: 15,
    pigmentG: 2000,
    density: 2.35,
    parts: 20,
    standard: {
      number: "IB-2602",
      date: "2026-02-06",
      masstone: "[masstone 1, masstone 2, masstone 3]",
    },
    lots: [
      { number: "IB-2408", date: "2024-08-13", strength: 1.006 },
      { number: "IB-2505", date: "2025-05-06", strength: 0.994 },
      {
        number: "IB-2605",
        date: "2026-05-19",
        strength: 0.86,
        note: "New bag of pigment from the same supplier.",
      },
    ],
  },
  "bone-black": {
    pigment: "bone-black",
    vehicle: "linseed-cold-pressed",
    dispersion: "milled",
    finenessUm: 25,
    pigmentG: 1200,
    density: 1.34,
    parts: 20,
    standard: {
      number: "BB-2602",
      date: "2026-02-05",
      masstone: "[masstone 1, masstone 2, masstone 3]",
    },
    lots: [
      { number: "BB-2410", date: "2024-10-01", strength: 0.99 },
      { number: "BB-2506", date: "2025-06-17", strength: 1.012 },
      { number: "BB-2606", date: "2026-06-09", strength: 1.004, really: "zinc-white" },
    ],
  },
  "yellow-ochre": {
    pigment: "yellow-ochre",
    vehicle: "linseed-cold-pressed",
    dispersion: "milled",
    pigmentG: 1000,
    density: 1.6,
    parts: 10,
    standard: { number: "YO-2603", date: "2026-03-04", masstone: "masstone", scale: "percent" },
    lots: [{ number: "YO-2503", date: "2025-03-11", strength: 1.01 }],
  },
  "burnt-sienna": {
    pigment: "burnt-sienna",
    vehicle: "linseed-cold-pressed",
    dispersion: "milled",
    pigmentG: 1000,
    density: 1.52,
    parts: 20,
    standard: { number: "BS-2603", date: "2026-03-16", masstone: "masstone" },
    lots: [{ number: "BS-2502", date: "2025-02-18", strength: 0.985 }],
  },
  "lamp-black": {
    pigment: "lamp-black",
    vehicle: "linseed-cold-pressed",
    addition: { vehicle: "cobalt-zirconium-drier", percentOfOil: 0.4 },
    dispersion: "mulled",
    pigmentG: 400,
    density: 1.22,
    parts: 20,
    standard: {
      number: "LB-2602",
      date: "2026-02-03",
      masstone: "[masstone 1, masstone 2, masstone 3]",
    },
    lots: [{ number: "LB-2412", date: "2024-12-03", strength: 1.015 }],
  },
};

const WAVELENGTHS_NM = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
/** As the readings of the colours themselves scatter in weighing, so that a lot's strength is beside theirs. */
const RATIO_SCATTER = 0.025;
const REPLICATE_SCATTER = 0.005;
const SCALE_DRIFT = 0.002;
const NOISE_SHARE = 0.0015;
const NOISE_FLOOR = 0.0002;
const TUBE_ML = 40;

/** Files of lots, below the content folder. */
export function inventedLots(): { readonly path: string; readonly text: string }[] {
  return (Object.entries(INVENTED_LOTS) as [PaintKey, LotsOfColour][]).flatMap(([paint, set]) => [
    ...set.lots.map((lot) => ({
      path: `lots/${slugOf(lot.number)}.yaml`,
      text: lotText(paint, set, lot),
    })),
    { path: `lots/${slugOf(set.standard.number)}.yaml`, text: standardText(paint, set) },
    { path: `readings/lots-${paint}.csv`, text: readingsText(paint, set) },
  ]);
}

function slugOf(number: string): string {
  return number.toLowerCase();
}

function readingsText(paint: PaintKey, set: LotsOfColour): string {
  const geometry = "d/8 excluded";
  const slip = Math.exp(RATIO_SCATTER * deviates(`${paint}, film titanium-white 1:${set.parts}`)());
  const columns = set.lots.flatMap(({ number, strength, really = "titanium-white" }) =>
    [1, 2].flatMap((replicate) => [
      {
        name: `${number} masstone ${replicate}`,
        values: read(
          trueReflectance({ paint, geometry }, WAVELENGTHS_NM),
          `${number} masstone ${replicate}`,
        ),
      },
      {
        name: `${number} let-down ${replicate}`,
        values: read(
          trueReflectance(
            { paint, geometry, into: { white: really, parts: set.parts, kind: "paint" } },
            WAVELENGTHS_NM,
            slip *
              strength *
              Math.exp(REPLICATE_SCATTER * deviates(`${number} weighing ${replicate}`)()),
          ),
          `${number} let-down ${replicate}`,
        ),
      },
    ]),
  );
  return csvText({ wavelengthsNm: WAVELENGTHS_NM, columns, geometry }, "factor");
}

function read(reflectances: readonly number[], key: string): number[] {
  const instrument = deviates(key);
  const scale = 1 + SCALE_DRIFT * instrument();
  return reflectances.map(
    (value) => value * scale + instrument() * (NOISE_FLOOR + NOISE_SHARE * value),
  );
}

/** Weights, yield and tubes of one lot, as a batch book has them. */
function weighedText(paint: PaintKey, set: LotsOfColour, number: string): string {
  const bench = deviates(`${number} batch`);
  const pigmentG = set.pigmentG + round(bench() * 2, 1);
  const oilG = round(
    (pigmentG * INVENTED_PAINTS[paint].oilGPer100g * (1 + 0.008 * bench())) / 100,
    1,
  );
  const addition =
    set.addition === undefined
      ? undefined
      : {
          vehicle: set.addition.vehicle,
          massG: round((oilG * set.addition.percentOfOil) / 100, 1),
        };
  const wholeG = pigmentG + oilG + (addition?.massG ?? 0);
  const yieldG = round(wholeG * (0.95 + 0.008 * bench()), 0);
  const tubeG = round(TUBE_ML * set.density * (1.012 + 0.004 * bench()), 1);
  const density = round(set.density * (1 + 0.003 * bench()), 3);
  const fineness = set.finenessUm === undefined ? undefined : set.finenessUm + round(bench(), 0);
  return [
    `pigments:`,
    `  - { pigment: ${set.pigment}, massG: ${round(pigmentG, 1)} }`,
    `oil: { vehicle: ${set.vehicle}, massG: ${oilG} }`,
    ...(addition === undefined
      ? []
      : [`additions: [{ vehicle: ${addition.vehicle}, massG: ${addition.massG} }]`]),
    `dispersion: ${set.dispersion}`,
    `passes: ${set.dispersion === "milled" ? 3 : 2}`,
    ...(fineness === undefined ? [] : [`finenessOfGrindUm: ${fineness}`]),
    `densityGPerCm3: ${density}`,
    `retainedSample: R-${number.slice(3)}-${number.slice(0, 2)}`,
    `yieldG: ${yieldG}`,
    `tubes: [{ ml: ${TUBE_ML}, count: ${Math.floor((yieldG * 0.985) / tubeG)}, massG: ${tubeG} }]`,
  ].join("\n");
}

const HEAD = "# yaml-language-server: $schema=../../assets/schema/lot.schema.json\n";
const INVENTED = "# Invented for the demonstration by test/demonstration/invented-lots.ts.\n";

function lotText(paint: PaintKey, set: LotsOfColour, lot: InventedLot): string {
  const { number, date, note } = lot;
  const reading = `reading: lots-${paint}.csv`;
  return `${HEAD}${INVENTED}number: ${number}
colour: ${paint}
date: ${date}
${weighedText(paint, set, number)}
masstone: { ${reading}, column: [${number} masstone 1, ${number} masstone 2] }
tints:
  - { white: titanium-white, massRatio: "1:${set.parts}", ratioKind: paint, ${reading}, column: [${number} let-down 1, ${number} let-down 2] }
${note === undefined ? "" : `note: ${note}\n`}`;
}

function standardText(paint: PaintKey, set: LotsOfColour): string {
  const { number, date, masstone, scale } = set.standard;
  const reading = `reading: ${paint}.csv${scale === undefined ? "" : `, scale: ${scale}`}`;
  return `${HEAD}${INVENTED}number: ${number}
colour: ${paint}
date: ${date}
${weighedText(paint, set, number)}
masstone: { ${reading}, column: ${masstone} }
tints:
  - { white: titanium-white, massRatio: "1:${set.parts}", ratioKind: paint, ${reading}, column: "titanium-white 1:${set.parts}" }
`;
}

function round(value: number, places: number): number {
  return Number(value.toFixed(places));
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const out = process.argv.indexOf("--out");
  const folder =
    out === -1 ? join(import.meta.dirname, "../../content") : (process.argv[out + 1] ?? ".");
  for (const { path, text } of inventedLots()) {
    mkdirSync(join(folder, path, ".."), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}
