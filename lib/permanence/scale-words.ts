/** Words of lightfastness scales, told apart: a word of the wrong scale is a fault with the nearest right form. */
import type { Complaint } from "../diagnostics/complaint.ts";
import { customaryCategory, blueWool } from "./blue-wool.ts";
import { GREY_SCALE } from "./grey-scale.ts";
import { LIGHTFASTNESS_LIMITS } from "./lightfastness.ts";
import { given } from "../quantities/given.ts";

export type LightfastnessScale = "category" | "blue wool" | "grey scale";

const SCALES: Readonly<
  Record<
    LightfastnessScale,
    { readonly words: readonly string[]; readonly expected: string; readonly field: string }
  >
> = {
  category: {
    words: LIGHTFASTNESS_LIMITS.map((row) => row.category),
    expected: "I, II, III, IV or V",
    field: "category",
  },
  "blue wool": {
    words: ["1", "2", "3", "4", "5", "6", "7", "8"],
    expected: "a whole number 1 to 8",
    field: "blueWool",
  },
  "grey scale": {
    words: GREY_SCALE.map((row) => row.grade),
    expected: "5, 4-5, 4, ... 1",
    field: "a grey-scale grade",
  },
};

/**
 * Fault of a word given on one scale, with where it belongs.
 *
 * @param word as the record has it. Only the scale's own spelling passes; a word that holds one ("LF I", "BW 7") is told what to write.
 * @returns undefined when the word is of the wanted scale.
 * @example scaleComplaint("7", "category")?.hint // "if it is blue wool 7, give it as blueWool; customarily set beside category I"
 */
export function scaleComplaint(word: string, wanted: LightfastnessScale): Complaint | undefined {
  const written = word.trim();
  if (SCALES[wanted].words.includes(written)) return undefined;
  return {
    severity: "error",
    rule: "permanence/wrong-scale",
    message: `"${word}" is no ${wanted === "category" ? "lightfastness category" : wanted === "blue wool" ? "blue wool reference" : "grade of the grey scale"}: that is ${SCALES[wanted].expected}`,
    actual: word,
    expected: SCALES[wanted].expected,
    hint: hintFor(written, wanted),
  };
}

function hintFor(written: string, wanted: LightfastnessScale): string | undefined {
  const inside =
    wanted === "category"
      ? /\b(III|II|IV|I|V)\b/i.exec(written)?.[1]?.toUpperCase()
      : /\b([1-8])\b/.exec(written)?.[1];
  if (SCALES["blue wool"].words.includes(written) && wanted === "category") {
    const asCategory = SCALES.category.words[Number(written) - 1];
    return given([
      asCategory !== undefined && `category ${written} is written ${asCategory}`,
      `if it is blue wool ${written}, give it as ${SCALES["blue wool"].field}; customarily set beside category ${customaryCategory(blueWool(Number(written))).row.category}`,
    ]).join("; ");
  }
  if (SCALES.category.words.includes(written.toUpperCase()) && wanted !== "category")
    return `${written} is a category: give it as ${SCALES.category.field}`;
  if (/^[1-5]-[1-5]$/.test(written) && wanted !== "grey scale")
    return `${written} is ${SCALES["grey scale"].field}: it tells a change, not a lightfastness`;
  return inside === undefined ? undefined : `write ${inside}`;
}
