/**
 * Chemistry of a pigment, as far as drying and film go, by Colour Index generic name.
 *
 * @source memory-drying : the Colour Index's own constitutions, recalled.
 */
import type { Chemistry } from "./chemistry-drying.ts";

export interface PigmentChemistryRow {
  readonly chemistry: Chemistry;
  readonly colourIndexNames: readonly string[];
}

export const PIGMENT_CHEMISTRY: readonly PigmentChemistryRow[] = [
  {
    chemistry: "lead",
    colourIndexNames: [
      "PW 1",
      "PW 2",
      "PR 103",
      "PR 104",
      "PR 105",
      "PY 34",
      "PY 41",
      "PY 46",
      "PO 21",
    ],
  },
  {
    chemistry: "cobalt",
    colourIndexNames: [
      "PB 28",
      "PB 35",
      "PB 36",
      "PB 72",
      "PB 73",
      "PB 74",
      "PG 19",
      "PG 26",
      "PG 50",
      "PV 14",
      "PV 47",
      "PV 48",
      "PV 49",
      "PY 40",
      "PBk 27",
    ],
  },
  { chemistry: "manganese", colourIndexNames: ["PBr 7", "PBr 8", "PBk 14", "PV 16", "PB 33"] },
  { chemistry: "iron cyanide", colourIndexNames: ["PB 27"] },
  {
    chemistry: "iron oxide",
    colourIndexNames: [
      "PBk 11",
      "PR 101",
      "PR 102",
      "PY 42",
      "PY 43",
      "PY 119",
      "PBr 6",
      "PBr 11",
      "PG 23",
    ],
  },
  { chemistry: "aluminosilicate", colourIndexNames: ["PB 29", "PV 15"] },
  { chemistry: "chromium oxide", colourIndexNames: ["PG 17", "PG 18"] },
  { chemistry: "copper chromite", colourIndexNames: ["PBk 28"] },
  {
    chemistry: "inert extender",
    colourIndexNames: [
      "PW 18",
      "PW 19",
      "PW 20",
      "PW 21",
      "PW 22",
      "PW 24",
      "PW 25",
      "PW 26",
      "PW 27",
    ],
  },
  { chemistry: "phthalocyanine", colourIndexNames: ["PB 15", "PB 16", "PG 7", "PG 36"] },
  { chemistry: "titanium dioxide", colourIndexNames: ["PW 6", "PY 53", "PBr 24"] },
  { chemistry: "zinc oxide", colourIndexNames: ["PW 4"] },
  { chemistry: "mercury sulphide", colourIndexNames: ["PR 106"] },
  { chemistry: "cadmium sulphide", colourIndexNames: ["PY 35", "PY 37", "PO 20", "PR 108"] },
  { chemistry: "coarse carbon", colourIndexNames: ["PBk 8", "PBk 9", "PBk 10"] },
  { chemistry: "fine carbon", colourIndexNames: ["PBk 6", "PBk 7"] },
  {
    chemistry: "organic",
    colourIndexNames: [
      "PBk 1",
      "PBk 31",
      "PBk 32",
      "PB 60",
      "PB 66",
      "PG 8",
      "PO 5",
      "PO 36",
      "PO 43",
      "PO 48",
      "PO 49",
      "PO 62",
      "PO 71",
      "PO 73",
      "PR 3",
      "PR 4",
      "PR 83",
      "PR 112",
      "PR 122",
      "PR 149",
      "PR 170",
      "PR 177",
      "PR 178",
      "PR 179",
      "PR 188",
      "PR 202",
      "PR 206",
      "PR 207",
      "PR 209",
      "PR 254",
      "PR 255",
      "PR 264",
      "PV 19",
      "PV 23",
      "PV 37",
      "PY 1",
      "PY 3",
      "PY 65",
      "PY 73",
      "PY 74",
      "PY 83",
      "PY 97",
      "PY 110",
      "PY 129",
      "PY 138",
      "PY 139",
      "PY 150",
      "PY 151",
      "PY 154",
      "PY 175",
      "NR 4",
      "NR 8",
      "NR 9",
      "NY 24",
      "NB 1",
      "NBr 8",
    ],
  },
];

/** A sienna and an umber share PBr 7, and the umber alone is rich in manganese (common practice). */
const SIENNA = /(?<!\p{L})sienna/iu;

/**
 * @param colourIndexName "PB 15:3" is looked up as it stands, then as "PB 15".
 * @param name of the pigment, where the Colour Index name holds two chemistries.
 * @returns undefined for a name that the table lacks.
 */
export function pigmentChemistry(colourIndexName: string, name = ""): Chemistry | undefined {
  const bare = colourIndexName.replace(/:\d+$/, "");
  if (bare === "PBr 7" && SIENNA.test(name)) return "manganese trace";
  return [colourIndexName, bare].flatMap((each) =>
    PIGMENT_CHEMISTRY.filter((row) => row.colourIndexNames.includes(each)),
  )[0]?.chemistry;
}
