import { lowerFirst } from "../words/en/pages.ts";
import type { Language } from "../records/schema/terms.ts";
import { CARD_FACTS, type CardFact, type CardStatement } from "./card-content.ts";
import type { LeftOver } from "./card-front.ts";
import {
  CAUTION_MIN_PT,
  QUIET,
  TEXT_MIN_PT,
  type CardGeometry,
  type CardPlan,
} from "./card-plan.ts";
import type { Block, Ink } from "./mark.ts";
import type { Face } from "./print-font.ts";
import { capitalsToBaselineMm, placedText } from "./set-text.ts";
import { wrappedLines } from "./text-lines.ts";

/** A stretch of text for the back; `lead` stands before it in a column of its own. */
interface Paragraph {
  readonly tag: "H3" | "P";
  readonly text: string;
  readonly lead?: string;
  readonly face: Face;
  readonly sizePt: number;
  /** Against the size. */
  readonly leading: number;
  /** No caution: may stand at the foot, and smaller. */
  readonly isNote?: boolean;
  readonly ink?: Ink;
  readonly language?: string;
  /** From the baseline before it to its capitals [mm]. */
  readonly gapMm: number;
}

/** From roomy to tight: gaps and leading; precautions a line each, or one after the other. */
interface Attempt {
  readonly tightness: number;
  readonly runIn: boolean;
}
const TRIES: readonly Attempt[] = [
  { tightness: 1, runIn: false },
  { tightness: 0.7, runIn: false },
  { tightness: 0.8, runIn: true },
  { tightness: 0.5, runIn: true },
];

/**
 * The back: what the front left to it, label in full, rags, poison centre, and at the
 * foot the lines that say what all of it rests on. Where one side is too small it goes
 * on over to the next: a caution is never cut short.
 * @returns one list of blocks for each side needed.
 */
export function cardBack(plan: CardPlan, geometry: CardGeometry, left: LeftOver): Block[][] {
  const tries = TRIES.map((attempt) =>
    flowed(plan, geometry, backParagraphs(plan, left, geometry.type, attempt)),
  );
  const least = Math.min(...tries.map(({ length }) => length));
  return tries.find(({ length }) => length === least) ?? [];
}

function flowed(
  plan: CardPlan,
  { safeMm, widthMm, heightMm }: CardGeometry,
  paragraphs: readonly Paragraph[],
): Block[][] {
  const [bottom, width] = [heightMm - safeMm, widthMm - 2 * safeMm];
  const sides: Block[][] = [];
  let side: Block[] = [];
  let baseline = safeMm;
  const begin = (): void => {
    side = [];
    sides.push(side);
    const head =
      sides.length === 1
        ? plan.content.name
        : plan.words.pages.cards.continued(plan.content.name, sides.length);
    const placed = placedText(
      { setting: HEAD, lines: wrappedLines(head, width, HEAD, plan.measure) },
      safeMm,
      safeMm,
    );
    side.push({ tag: "P", marks: placed.marks });
    baseline = placed.baselineMm;
  };
  begin();
  const leadMm =
    Math.max(
      0,
      ...paragraphs.map(({ lead, face, sizePt }) =>
        lead === undefined ? 0 : plan.measure(lead, face, sizePt),
      ),
    ) + 1.5;
  let notesFrom: number | undefined;
  for (const {
    tag,
    text,
    lead,
    face,
    sizePt,
    leading,
    ink,
    language,
    gapMm,
    isNote = false,
  } of paragraphs) {
    const setting = { face, sizePt, leadingPt: sizePt * leading };
    const indent = lead === undefined ? 0 : leadMm;
    let lines = wrappedLines(text, width - indent, setting, plan.measure);
    let isFirst = true;
    while (lines.length > 0) {
      const top = baseline + (side.length === 1 ? Math.max(gapMm, UNDER_HEAD_MM) : gapMm);
      const room = lines.filter(
        (_, i) =>
          top + capitalsToBaselineMm({ setting, lines: lines.slice(0, i + 1) }) <= bottom + 1e-6,
      ).length;
      // A line alone at the foot or the head of a side reads badly: then the whole paragraph goes over.
      if (room < lines.length && (room < 2 || lines.length - room < 2) && side.length > 1) {
        begin();
        continue;
      }
      const taken = lines.slice(0, Math.max(1, room));
      const placed = placedText({ setting, lines: taken }, safeMm + indent, top, ink);
      const [first] = placed.marks;
      const leadMark =
        isFirst && lead !== undefined && lead !== "" && first !== undefined
          ? [{ ...first, text: lead, xMm: safeMm, ink: QUIET }]
          : [];
      if (isNote) notesFrom ??= side.length;
      side.push({
        tag,
        ...(language === undefined ? {} : { language }),
        marks: [...leadMark, ...placed.marks],
      });
      baseline = placed.baselineMm;
      lines = lines.slice(taken.length);
      isFirst = false;
      if (lines.length > 0) begin();
    }
  }
  return sides.length === 1 && notesFrom !== undefined
    ? [lowered(side, notesFrom, bottom - baseline)]
    : sides;
}

/** Notes stand at the foot of a side that has room. */
function lowered(side: readonly Block[], from: number, byMm: number): Block[] {
  return side.map((block, i) =>
    i < from
      ? block
      : {
          ...block,
          marks: block.marks.map((mark) =>
            mark.kind === "text" ? { ...mark, yMm: mark.yMm + byMm } : mark,
          ),
        },
  );
}

/** From the name to what comes first under it. */
const UNDER_HEAD_MM = 1.8;
const HEAD = { face: "serif", sizePt: 9, leadingPt: 10 } as const;

function backParagraphs(
  { content, revision, words }: CardPlan,
  left: LeftOver,
  type: number,
  { tightness, runIn }: Attempt,
): Paragraph[] {
  const cautionPt = Math.max(CAUTION_MIN_PT, 7 * Math.min(1.1, type));
  const notePt = Math.max(TEXT_MIN_PT, 6 * Math.min(1.1, type) * (0.85 + 0.15 * tightness));
  const { cards: text } = words.pages;
  const { label } = content;
  const caution = (said: string, gapMm: number, more: Partial<Paragraph> = {}): Paragraph => ({
    tag: "P",
    text: said,
    face: "sans",
    sizePt: cautionPt,
    leading: 1.1 + 0.06 * tightness,
    gapMm: 1 + (gapMm - 1) * tightness,
    ...more,
  });
  const note = (said: string, gapMm = 1.15): Paragraph => ({
    ...caution(said, gapMm),
    sizePt: notePt,
    isNote: true,
  });
  const plain = (said: string): Paragraph => ({ ...note(said), isNote: false });
  const inLanguage = (language: Language): Partial<Paragraph> =>
    language === words.language ? {} : { language };
  const listed = (statements: readonly CardStatement[]): Paragraph[] =>
    statements.flatMap(({ code, texts }) =>
      texts.map((one, i) =>
        caution(one.text, i === 0 ? 1.3 : 1.1, {
          lead: i === 0 ? (code ?? "") : "",
          ...inLanguage(one.language),
        }),
      ),
    );
  const inOne = (statements: readonly CardStatement[]): Paragraph[] =>
    [...new Set(statements.flatMap(({ texts }) => texts.map(({ language }) => language)))].map(
      (language) =>
        caution(
          statements
            .flatMap(({ code, texts }) =>
              texts
                .filter((one) => one.language === language)
                .map(({ text: said }) => coded(code, said)),
            )
            .join(" "),
          1.5,
          inLanguage(language),
        ),
    );
  return [
    ...(left.sentence ? [plain(content.sentence)] : []),
    ...(left.facts
      ? [plain(`${CARD_FACTS.map((name) => factText(content.facts[name], words)).join("; ")}.`)]
      : []),
    ...(left.sizes && content.sizes.length > 0
      ? [
          plain(
            content.sizes
              .map(({ size: ml, price }) => (price === undefined ? ml : `${ml} ${price}`))
              .join(", "),
          ),
        ]
      : []),
    ...(label.signalWords.length === 0
      ? []
      : [caution(label.signalWords.join(" \u00b7 "), 2.4, { tag: "H3", face: "sans bold" })]),
    ...(runIn
      ? label.statements.flatMap(({ code, texts }) =>
          texts.map((one) => caution(coded(code, one.text), 1.2, inLanguage(one.language))),
        )
      : listed(label.statements)),
    ...(runIn ? inOne : listed)(label.precautions),
    ...(label.notice === undefined ? [] : [caution(label.notice, 2.2, { face: "sans bold" })]),
    ...(content.rags === undefined ? [] : [caution(content.rags, 2.2)]),
    caution(content.poisonCentre, 2.2),
    caution(content.deference, 2.2),
    ...(label.basis === undefined ? [] : [note(label.basis, 2.2)]),
    note(
      isAdapted(content) ? `${content.drawdownNote} ${text.approximateNote}` : content.drawdownNote,
      label.basis === undefined ? 2.2 : 1.15,
    ),
    note([...content.imprint, text.revision(revision)].join(" \u00b7 ")),
  ];
}

/** A statement after its code, where it has one. */
function coded(code: string | undefined, text: string): string {
  return code === undefined ? text : `${code}\u00a0${text}`;
}

/** "Opacity: opaque (derived)" */
function factText({ name, text, standing }: CardFact, { standings }: CardPlan["words"]): string {
  return standing === "not stated"
    ? `${name}: ${standings[standing].word}`
    : `${name}: ${lowerFirst(text)} (${standings[standing].word})`;
}

function isAdapted({ masstone, tints }: CardPlan["content"]): boolean {
  return [...(masstone === undefined ? [] : [masstone]), ...tints].some(
    ({ approximate }) => approximate,
  );
}
