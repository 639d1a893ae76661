import { worded } from "../by-rule.ts";
import type { TargetStatement } from "../../mixing/finding/target-text.ts";
import type { AddressStatement } from "../../mixing/mix-address.ts";
import type { FilmStatement, MixStatement } from "../../mixing/mix.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { listed, within } from "./phrases.ts";

export type MixingStatement = MixStatement | FilmStatement | AddressStatement | TargetStatement;

/** Why a mix is not predicted, not shown as a film, or not understood; the pages' scripts carry these too. */
export const MIXING_STATEMENTS: WordingsOf<MixingStatement> = {
  "nothing-mixed": () => "Nothing is mixed yet: give one paint a part or more.",
  "paint-not-fitted": ({ paint, reason }) =>
    `${paint} cannot be predicted in a mixture.${reason === "" ? "" : ` ${reason}`}`,
  "paint-not-let-down-in": ({ paint, white }) =>
    `${paint} was not tried in ${within(white)}, so nothing is known of it there. Choose another white.`,
  "white-not-read": ({ white }) => `${white} itself was not read, so it cannot be shown alone.`,
  "paints-read-unlike": ({ first, other }) =>
    `${first} and ${within(other)} were read with instruments of different geometry, so they cannot be added up.`,
  "density-not-recorded": ({ paints }) =>
    `How heavy a millilitre of ${listed(paints.map(within))} is has not been recorded. Mix by weight instead.`,
  "pigment-share-not-recorded": ({ paint }) =>
    `How much pigment is in ${within(paint)} has not been recorded, so it cannot be mixed as paint.`,
  "white-films-not-read": ({ white }) =>
    `No thin films of ${within(white)} were read, so only a coat that hides can be shown.`,
  "medium-films-not-read": ({ medium }) =>
    `No thin films of ${within(medium)} were read, so what it does to the colour is not known.`,
  "grounds-not-read": () =>
    "No opacity chart is on record, so only a coat that hides can be shown.",
  "film-needs-let-downs": () =>
    "One of these paints was never let down in this white, so only a coat that hides can be shown.",
  "no-such-paint": ({ slug, near }) =>
    `There is no paint \u201c${slug}\u201d here${near === undefined ? "" : `; perhaps ${near} was meant`}.`,
  "no-such-parts": ({ paint, parts }) =>
    `\u201c${parts}\u201d is no number of parts; ${within(paint)} counts as one part.`,
  "too-many-colours": ({ most }) =>
    `No more than ${most} colours are mixed; the others are left out.`,
  "no-such-choice": ({ key, value }) =>
    `\u201c${value}\u201d is no choice for \u201c${key}\u201d; the usual one is shown.`,
  "no-colour-notation": ({ text }) =>
    text === ""
      ? "Write a colour: a Munsell notation (5PB 4/2), L*a*b* (42 \u22121 \u22127) or a screen colour (#6b6f76)."
      : `\u201c${text}\u201d is no colour that this page can read: try 5PB 4/2, 42 \u22121 \u22127 or #6b6f76.`,
  "no-surface-colour": ({ text }) =>
    `No paint can have the colour ${text}: it lies outside what a surface throws back.`,
};

export const mixingSentence = (statement: MixingStatement): string =>
  worded(MIXING_STATEMENTS, statement);
