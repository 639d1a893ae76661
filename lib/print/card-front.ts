import { CARD_FACTS, type CardFactName } from "./card-content.ts";
import { QUIET, type CardGeometry, type CardPlan } from "./card-plan.ts";
import { CardTooLarge } from "./card-fault.ts";
import { cautionFoot, type CautionFoot, type FootShown } from "./label-footer.ts";
import type { Block, Mark } from "./mark.ts";
import { capitalsToBaselineMm, placedText } from "./set-text.ts";
import { STANDING_MARK_WIDTH, standingMarks } from "./standing-marks.ts";
import { swatchPanelBlocks } from "./swatch-panel-blocks.ts";
import {
  balancedLines,
  fittedText,
  MM_PER_PT,
  shrinking,
  wrappedLines,
  type Measure,
  type SetText,
} from "./text-lines.ts";

/** What a front left to the back. */
export interface LeftOver {
  readonly statements: boolean;
  readonly facts: boolean;
  readonly sentence: boolean;
  readonly sizes: boolean;
}

export interface Front {
  readonly blocks: readonly Block[];
  readonly left: LeftOver;
}

/** What one try puts on the front, and how tightly. */
interface Attempt extends FootShown {
  readonly tightness: number;
  readonly facts: boolean;
  readonly sentence: boolean;
}

const ROOMY: Attempt = {
  tightness: 1,
  statements: true,
  ragsInWords: true,
  facts: true,
  sentence: true,
};
const at =
  (...tightnesses: readonly number[]) =>
  (attempt: Attempt): Attempt[] =>
    tightnesses.map((tightness) => ({ ...attempt, tightness }));

/** From roomy to tight; then statements, facts and sentence go to the back, in that order. Symbols, word and rags never do. */
const TRIES: readonly Attempt[] = [
  ...at(1, 0.96, 0.92)(ROOMY),
  ...at(1, 0.96, 0.92)({ ...ROOMY, statements: false }),
  ...at(1, 0.96, 0.92, 0.88)({ ...ROOMY, statements: false, ragsInWords: false }),
  ...at(0.92, 0.88)({ ...ROOMY, statements: false, ragsInWords: false, facts: false }),
  ...at(
    0.88,
    0.8,
    0.7,
  )({ ...ROOMY, statements: false, ragsInWords: false, facts: false, sentence: false }),
];

/**
 * A card's front: swatches at the left on their panel; at the right name, what it is
 * made of, the sentence, the facts, and at the foot label and address.
 * @throws CardTooLarge for a size on which the least that a front holds finds no room.
 */
export function cardFront(plan: CardPlan, geometry: CardGeometry): Front {
  const panel = swatchPanelBlocks(plan, geometry);
  const leftMm = panel.widthMm + geometry.safeMm * 0.9;
  const widthMm = geometry.widthMm - geometry.safeMm - leftMm;
  for (const attempt of TRIES) {
    const column = cardColumn(plan, geometry, leftMm, widthMm, attempt);
    if (column === undefined) continue;
    return {
      blocks: [...column.head, ...panel.blocks, ...column.rest],
      left: {
        statements: !attempt.statements,
        facts: !attempt.facts,
        sentence: !attempt.sentence,
        sizes: panel.sizesLeft,
      },
    };
  }
  throw new CardTooLarge(
    plan.size.name,
    plan.content.slug,
    "name, pigments, swatches, symbols and signal word",
  );
}

interface Column {
  readonly head: readonly Block[];
  readonly rest: readonly Block[];
}

function cardColumn(
  plan: CardPlan,
  { safeMm, heightMm, type }: CardGeometry,
  leftMm: number,
  widthMm: number,
  attempt: Attempt,
): Column | undefined {
  const { content, measure } = plan;
  const size = (pt: number, floor: number): number =>
    Math.max(floor, pt * type * attempt.tightness);
  const gap = (mm: number): number => mm * type * attempt.tightness ** 2.5;
  const { name, madeOf } = heading(plan, widthMm, type, attempt.tightness);
  const sentence: SetText = {
    setting: { face: "serif italic", sizePt: size(8, 7), leadingPt: size(8, 7) * 1.2 },
    lines: balancedLines(
      content.sentence,
      widthMm,
      { face: "serif italic", sizePt: size(8, 7) },
      measure,
    ),
  };

  const nameAt = placedText(name, leftMm, safeMm);
  const madeAt = placedText(madeOf, leftMm, nameAt.baselineMm + gap(2.7));
  const sentenceAt = placedText(sentence, leftMm, madeAt.baselineMm + gap(2.6));
  const afterSentence = attempt.sentence ? sentenceAt.baselineMm : madeAt.baselineMm;
  const facts = factRows(
    plan,
    leftMm,
    widthMm,
    afterSentence + gap(3),
    size(7.2, 6.5),
    attempt.facts ? CARD_FACTS : [],
  );

  const foot = cautionFoot(plan, {
    leftMm,
    widthMm,
    bottomMm: heightMm - safeMm,
    type,
    shown: attempt,
  });
  const head: Block[] = [
    { tag: "H2", marks: nameAt.marks },
    { tag: "P", marks: madeAt.marks },
  ];
  const column: Block[] = [
    ...(attempt.sentence ? [{ tag: "P", marks: sentenceAt.marks } as const] : []),
    ...facts.blocks,
  ];
  if (
    !(facts.baselineMm + gap(2.2) <= foot.topMm) ||
    [...head, ...column].some((block) => runsInto(block, foot, measure))
  )
    return undefined;
  return { head, rest: [...column, ...foot.blocks] };
}

/** Whether a text comes into the clear space of the address. */
function runsInto({ marks }: Block, { address }: CautionFoot, measure: Measure): boolean {
  return marks.some(
    (mark) =>
      mark.kind === "text" &&
      mark.yMm + 0.21 * mark.sizePt * MM_PER_PT > address.topMm &&
      mark.xMm + measure(mark.text, mark.face, mark.sizePt) > address.leftMm,
  );
}

/** Name and pigments: large while they fit, then smaller, then in more lines. */
function heading(
  { content, measure }: CardPlan,
  widthMm: number,
  type: number,
  tightness: number,
): { readonly name: SetText; readonly madeOf: SetText } {
  const tight = tightness < 0.9;
  const oneLine = fittedText(
    content.name,
    widthMm,
    1,
    shrinking("serif", 15.5 * type, 12.5 * type, 1.08),
    measure,
  );
  const name =
    oneLine.lines.length === 1
      ? oneLine
      : fittedText(
          content.name,
          widthMm,
          2,
          shrinking("serif", 13 * type * tightness, tight ? 8.5 : 11 * type, 1.08),
          measure,
        );
  const madeOf = fittedText(
    content.madeOf,
    widthMm,
    2,
    shrinking("sans", 7.4 * type * tightness, tight ? 6 : 7, 1.2),
    measure,
  );
  return {
    name,
    madeOf: { ...madeOf, lines: balancedLines(content.madeOf, widthMm, madeOf.setting, measure) },
  };
}

/** Label, standing and words of each fact, in three columns. */
function factRows(
  { content, measure }: CardPlan,
  leftMm: number,
  widthMm: number,
  topMm: number,
  sizePt: number,
  names: readonly CardFactName[],
): { readonly blocks: readonly Block[]; readonly baselineMm: number } {
  const facts = names.map((name) => content.facts[name]);
  const leadingPt = sizePt * 1.24;
  const labelMm = Math.max(0, ...facts.map(({ name }) => measure(name, "sans", sizePt))) + 1.5;
  const markMm = STANDING_MARK_WIDTH * sizePt * MM_PER_PT + 0.8;
  const x = leftMm + labelMm + markMm;
  let top = topMm,
    baselineMm = topMm - 1;
  const blocks = facts.map(({ name, text, standing }): Block => {
    const value = placedText(
      {
        setting: { face: "sans", sizePt, leadingPt: sizePt * 1.12 },
        lines: wrappedLines(text, widthMm - labelMm - markMm, { face: "sans", sizePt }, measure),
      },
      x,
      top,
    );
    const first = value.marks[0]?.yMm ?? top;
    const marks: Mark[] = [
      { kind: "text", text: name, xMm: leftMm, yMm: first, face: "sans", sizePt, ink: QUIET },
      ...standingMarks(standing, leftMm + labelMm, first, sizePt),
      ...value.marks,
    ];
    baselineMm = value.baselineMm;
    top =
      baselineMm +
      leadingPt * MM_PER_PT -
      capitalsToBaselineMm({ setting: { face: "sans", sizePt, leadingPt }, lines: [""] });
    return { tag: "P", marks };
  });
  return { blocks, baselineMm };
}
