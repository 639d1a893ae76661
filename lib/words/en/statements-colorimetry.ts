import type { StatementWording } from "../words.ts";
import { bracketed, decimals, listed, sentence } from "./statements-phrases.ts";
import { numberOf, textOf, wordOf, type Values } from "./statement-params.ts";

const CHANGES = {
  lighter: "lighter",
  darker: "darker",
  stronger: "stronger",
  duller: "duller",
  same: "",
} as const;

/** Colour notations, lamplight, metamerism. */
export const COLORIMETRY_RULINGS = {
  "holds-in-lamplight": (v) => `Holds its colour in lamplight (${deltaE(v, "deltaE00")}).`,
  "shifts-slightly-in-lamplight": (v) => shift(v, "slightly"),
  "shifts-clearly-in-lamplight": (v) => shift(v, "clearly"),

  "differs-in-daylight": (v) => `The two differ in daylight already (${deltaE(v, "daylight")}).`,
  "metameric-pair": (v) =>
    `A metameric pair: alike in daylight (${deltaE(v, "daylight")}), parted by lamplight (${deltaE(v, "index")} from the light alone).`,
  "matches-in-both-lights": (v) =>
    `Alike in daylight (${deltaE(v, "daylight")}), and lamplight parts them no further than ${deltaE(v, "index")}.`,

  "impossible-colour": (v) =>
    `No surface has this colour under ${viewing(v, "viewing")}: ${lab(v)}.`,
  "lamplight-needs-a-spectrum": (v) =>
    `Only a spectrum tells how a colour changes from ${viewing(v, "from")} to ${viewing(v, "to")}.`,
  "lighter-than-munsell-white": (v) =>
    `Lighter than the white of the Munsell scale (Y ${decimals(numberOf(v, "luminanceFactor"), 1)}), so it has no Munsell notation.`,
  "beyond-munsell-renotation": (v) =>
    `Beyond the Munsell renotation (${lab(v)}), so it has no Munsell notation.`,
} as const satisfies Record<string, StatementWording>;

function deltaE(values: Values, name: string): string {
  return `\u0394E00 ${decimals(numberOf(values, name), 1)}`;
}

function lab(values: Values): string {
  return ["L", "a", "b"]
    .map((axis) => `${axis}* ${decimals(numberOf(values, axis), 1)}`)
    .join(", ");
}

function shift(values: Values, how: string): string {
  const changes = ["lightness", "chroma"].flatMap(
    (name) => CHANGES[wordOf(values, name, CHANGES)] || [],
  );
  const also = changes.length === 0 ? "" : `, and turns ${listed(changes)}`;
  return sentence(
    `shifts ${how} toward ${textOf(values, "towards")} in lamplight${also}${bracketed(deltaE(values, "deltaE00"))}`,
  );
}

/** "D65/10" as "D65, 10\u00b0"; a viewing of lamplight says so. */
function viewing(values: Values, name: string): string {
  const [light = "", observer] = textOf(values, name).split("/");
  return `${light === "A" ? "A (lamplight)" : light}${observer === undefined ? "" : `, ${observer}\u00b0`}`;
}
