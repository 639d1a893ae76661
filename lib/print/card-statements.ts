import type { Words } from "../words/words.ts";
import { revision } from "../sheet/revision.ts";
import { CARD_FACTS, type CardContent, type CardStatement, type CardTint } from "./card-content.ts";

/** Between members of one line: the same in every language, since a program parts them again. */
export const BETWEEN_STATES = "; ";

export type CardStates = Readonly<Partial<Record<keyof Words["pages"]["cards"]["states"], string>>>;

/** What a card states, each in a line of text: what an earlier manifest is compared with. */
export function cardStates(content: CardContent): CardStates {
  const { label } = content;
  const line = (parts: readonly string[]): string | undefined =>
    parts.length === 0 ? undefined : parts.join(BETWEEN_STATES);
  const states: Record<string, string | undefined> = {
    name: content.name,
    madeOf: content.madeOf,
    masstone:
      content.masstone === undefined
        ? undefined
        : line([labText(content.masstone), ...[content.masstoneNote ?? []].flat()]),
    tints: line(content.tints.map(({ caption, colour }) => `${caption}: ${labText(colour)}`)),
    sentence: content.sentence,
    ...Object.fromEntries(CARD_FACTS.map((fact) => [fact, content.facts[fact].text])),
    strength: line([content.facts.strength.text, ...[content.strength ?? []].flat()]),
    signalWord: line(label.signalWords),
    pictograms: line(label.pictograms.map(({ name }) => name)),
    statements: line(label.statements.map(statementText)),
    precautions: line(label.precautions.map(statementText)),
    unknown: label.notice,
    rags: content.rags?.full,
    layers: content.layers,
    sizes: line(content.sizes.map(({ text }) => text)),
    poisonCentre: content.poisonCentre,
    basis: label.basis,
    address: content.address,
    lot: content.lot,
    imprint: line([content.deference, content.drawdownNote, ...content.imprint]),
  };
  return Object.fromEntries(
    Object.entries(states)
      .filter(([, text]) => text !== undefined)
      .map(([key, text]) => [key, text?.replaceAll("\u00a0", " ")]),
  );
}

/** Eight hex digits that a card bears: they change when anything it states changes, and only then. */
export function cardRevision(content: CardContent): string {
  return revision(cardStates(content));
}

function labText({ hex, lab }: CardTint["colour"]): string {
  if (lab === undefined) return hex;
  const { L, a, b } = lab;
  return `L* ${L.toFixed(1)}, a* ${(a + 0).toFixed(1)}, b* ${(b + 0).toFixed(1)}`;
}

function statementText({ code, texts }: CardStatement): string {
  const text = texts.map((one) => one.text).join(" / ");
  return code === undefined ? text : `${code} ${text}`;
}
