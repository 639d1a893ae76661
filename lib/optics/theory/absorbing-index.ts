/** Refractive indices of what blackens, by wavelength: tables, straight between their rows and flat past their ends. */
import { requireVisible, type ComplexIndex, type IndexSet } from "./refractive-index.ts";

/** Wavelength [nm], then two numbers of the table. */
type Row = readonly [wavelengthNm: number, one: number, other: number];

/** Values of a table at a wavelength, straight between its rows, its end values past them. */
function between(rows: readonly Row[], wavelengthNm: number): readonly [number, number] {
  requireVisible(wavelengthNm);
  const next = rows.findIndex(([nm]) => nm >= wavelengthNm);
  const upper = rows[next === -1 ? rows.length - 1 : next];
  const lower = rows[next === -1 ? rows.length - 1 : Math.max(next - 1, 0)];
  if (upper === undefined || lower === undefined)
    throw new Error("The table of refractive indices is empty");
  const span = upper[0] - lower[0];
  const share = span === 0 ? 0 : (wavelengthNm - lower[0]) / span;
  return [lower[1] + share * (upper[1] - lower[1]), lower[2] + share * (upper[2] - lower[2])];
}

/** n + i k = sqrt(eps1 + i eps2). */
export function indexOfPermittivity(eps1: number, eps2: number): ComplexIndex {
  const size = Math.hypot(eps1, eps2);
  return { n: Math.sqrt((size + eps1) / 2), k: Math.sqrt((size - eps1) / 2) };
}

/** eps1, eps2. @source huffman-stapp-1973 : as tabulated second-hand */
const MAGNETITE_ROWS: readonly Row[] = [
  [400, 5.152, 3.904],
  [434.8, 5.484, 3.528],
  [476.2, 5.688, 3.372],
  [500, 5.827, 3.25],
  [555.6, 5.915, 3.112],
  [588.2, 6.154, 3.009],
  [625, 6.375, 2.734],
  [666.7, 6.416, 2.528],
  [714.3, 6.317, 2.193],
];

/** eps1, eps2. @source bergstrom-1973 */
const CARBON_ROWS: readonly Row[] = [
  [400, 3.058, 2.594],
  [500, 3.328, 2.56],
  [600, 3.55, 2.547],
  [700, 3.724, 2.557],
];

/** n, k. @source chang-charalampopoulos-1990 */
const FLAME_SOOT_ROWS: readonly Row[] = [
  [400, 1.5, 0.65],
  [540, 1.63, 0.48],
  [710, 1.61, 0.47],
];

/** Iron(II,III) oxide. */
export const MAGNETITE: IndexSet = {
  name: "magnetite",
  source: "huffman-stapp-1973",
  at: (nm) => indexOfPermittivity(...between(MAGNETITE_ROWS, nm)),
};

const CARBON: IndexSet = {
  name: "carbon",
  source: "bergstrom-1973",
  at: (nm) => indexOfPermittivity(...between(CARBON_ROWS, nm)),
};

/** Carbon as three groups measured it: they disagree, and a band has to cover them all. */
export const CARBONS: readonly IndexSet[] = [
  CARBON,
  {
    name: "flame soot",
    source: "chang-charalampopoulos-1990",
    at: (nm) => {
      const [n, k] = between(FLAME_SOOT_ROWS, nm);
      return { n, k };
    },
  },
  {
    name: "acetylene soot",
    source: "dalzell-sarofim-1969",
    at: (nm) => {
      requireVisible(nm);
      return { n: 1.56, k: 0.46 };
    },
  },
];

/** Index of calcium phosphate (apatite), and volume of carbon in charred bone: 10 or 20 % by mass at 1.8 and 3.1 g/cm3. */
const APATITE = 1.64;
const CARBON_VOLUMES = [0.16, 0.3];

/**
 * Charred bone: carbon spread finely through calcium phosphate, taken as one
 * substance with the index of both by volume. A guess for want of a measurement.
 * @source bone-char-index
 */
export const BONE_CHARS: readonly IndexSet[] = CARBON_VOLUMES.map((volume): IndexSet => ({
  name: `bone char, ${Math.round(volume * 100)} % carbon by volume`,
  source: "bone-char-index",
  at: (nm) => {
    const { n, k } = CARBON.at(nm);
    return { n: (1 - volume) * APATITE + volume * n, k: volume * k };
  },
}));
