/**
 * Whether a dry pigment's dust can burn: fine carbon and organic pigments can,
 * minerals do not. By generic name `dust-nature.csv` tells it; else the Colour Index
 * constitution number does (77000 and above: inorganic, from memory), of six digits by its first five.
 */
export const PIGMENT_NATURES = ["fine carbon", "organic", "mineral"] as const;
export type PigmentNature = (typeof PIGMENT_NATURES)[number];

/** Charcoal and the soot pigments; bone black (77267) is nine parts of ten mineral. */
const CARBON_NUMBERS = ["77265", "77266", "77268", "77268:1"];
const CARBON_BLACK_CAS = "1333-86-4";
const FIRST_INORGANIC_NUMBER = 77000;
/** Metal powders among the inorganic numbers, which no mineral is: aluminium, and copper with bronze. Aluminium's dust explodes. */
const METAL_NUMBERS = ["77000", "77400"];

/**
 * @param named by its Colour Index generic name, as the table has it.
 * @returns undefined when neither name nor number tells it, and of a metal: then it is to be treated as if it could burn.
 */
export function pigmentNature(
  {
    casNumber,
    colourIndexNumber: number,
  }: { readonly casNumber?: string | undefined; readonly colourIndexNumber?: string | undefined },
  named: PigmentNature | undefined,
): PigmentNature | undefined {
  if (casNumber === CARBON_BLACK_CAS || (number !== undefined && CARBON_NUMBERS.includes(number)))
    return "fine carbon";
  if (named !== undefined || number === undefined) return named;
  const first = number.slice(0, 5);
  if (METAL_NUMBERS.includes(first)) return undefined;
  return Number(first) >= FIRST_INORGANIC_NUMBER ? "mineral" : "organic";
}
