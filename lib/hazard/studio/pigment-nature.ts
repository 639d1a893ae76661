/**
 * Whether a dry pigment's dust can burn: fine carbon and organic pigments can,
 * minerals do not. Told by Colour Index constitution number (77000 and above:
 * inorganic), else by generic name; all from memory of the trade.
 */
import { isSubstance, type PigmentIdentity } from "../classify/substance.ts";

export const PIGMENT_NATURES = ["fine carbon", "organic", "mineral"] as const;
export type PigmentNature = (typeof PIGMENT_NATURES)[number];

/** Charcoal and the soot pigments; bone black (77267) is nine parts of ten mineral. */
const CARBON_NUMBERS = ["77265", "77266", "77268", "77268:1"];
const CARBON_NAMES = ["PBk 6", "PBk 7", "PBk 8"];
const FIRST_INORGANIC_NUMBER = 77000;

const MINERAL_NAMES = new Set([
  "PW 1",
  "PW 2",
  "PW 3",
  "PW 4",
  "PW 5",
  "PW 6",
  "PW 6:1",
  "PW 7",
  "PW 18",
  "PW 18:1",
  "PW 19",
  "PW 20",
  "PW 21",
  "PW 22",
  "PW 24",
  "PW 25",
  "PW 26",
  "PW 27",
  "PBk 9",
  "PBk 11",
  "PBk 14",
  "PBk 17",
  "PBk 26",
  "PBk 28",
  "PBk 29",
  "PBk 30",
  "PBk 33",
  "PR 101",
  "PR 102",
  "PR 104",
  "PR 105",
  "PR 106",
  "PR 108",
  "PR 113",
  "PR 233",
  "PO 20",
  "PO 23",
  "PY 31",
  "PY 32",
  "PY 34",
  "PY 35",
  "PY 36",
  "PY 37",
  "PY 40",
  "PY 41",
  "PY 42",
  "PY 43",
  "PY 53",
  "PY 119",
  "PY 184",
  "PBr 6",
  "PBr 7",
  "PBr 8",
  "PBr 24",
  "PBr 29",
  "PB 27",
  "PB 28",
  "PB 29",
  "PB 30",
  "PB 31",
  "PB 33",
  "PB 35",
  "PB 36",
  "PB 74",
  "PG 17",
  "PG 18",
  "PG 19",
  "PG 20",
  "PG 23",
  "PG 24",
  "PG 26",
  "PG 50",
  "PV 14",
  "PV 15",
  "PV 16",
  "PV 49",
]);
const ORGANIC_NAMES = new Set([
  "PB 15",
  "PB 15:1",
  "PB 15:3",
  "PB 15:4",
  "PB 15:6",
  "PB 16",
  "PB 60",
  "PB 66",
  "PG 7",
  "PG 36",
  "PBk 1",
  "PBk 31",
  "PBk 32",
  "PV 19",
  "PV 23",
  "PV 29",
  "PR 83",
  "PR 122",
  "PR 149",
  "PR 170",
  "PR 177",
  "PR 178",
  "PR 179",
  "PR 202",
  "PR 206",
  "PR 209",
  "PR 254",
  "PR 255",
  "PR 264",
  "PO 43",
  "PO 48",
  "PO 62",
  "PO 71",
  "PO 73",
  "PY 1",
  "PY 3",
  "PY 65",
  "PY 74",
  "PY 83",
  "PY 110",
  "PY 129",
  "PY 139",
  "PY 150",
  "PY 151",
  "PY 154",
  "PY 175",
  "NR 4",
  "NR 8",
  "NR 9",
  "NB 1",
  "NY 13",
  "NY 14",
  "NBr 8",
]);

/** @returns undefined when neither number nor name tells it: then it is to be treated as if it could burn. */
export function pigmentNature(
  pigment: PigmentIdentity & { readonly colourIndexNumber?: string | undefined },
): PigmentNature | undefined {
  const { colourIndexName: name, colourIndexNumber: number } = pigment;
  const isCarbon =
    isSubstance(pigment, "carbon black") ||
    (number !== undefined && CARBON_NUMBERS.includes(number)) ||
    (name !== undefined && CARBON_NAMES.includes(name));
  if (isCarbon) return "fine carbon";
  if (number !== undefined)
    return Number.parseInt(number, 10) >= FIRST_INORGANIC_NUMBER ? "mineral" : "organic";
  if (name === undefined) return undefined;
  if (MINERAL_NAMES.has(name)) return "mineral";
  return ORGANIC_NAMES.has(name) ? "organic" : undefined;
}
