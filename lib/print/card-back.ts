import { CARD_FACTS } from "./card-content.ts";
import type { LeftOver } from "./card-front.ts";
import { CAUTION_MIN_PT, QUIET, type CardGeometry, type CardPlan } from "./card-plan.ts";
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
  readonly ink?: Ink;
  readonly language?: string;
  /** From the baseline before it to its capitals [mm]. */
  readonly gapMm: number;
}

/**
 * The back: what the front left to it, label in full, rags, poison centre, and the
 * lines that say what all of it rests on. Where one side is too small it goes on over
 * to the next: a caution is never cut short.
 * @returns one list of blocks for each side needed.
 */
export function cardBack(plan: CardPlan, geometry: CardGeometry, left: LeftOver): Block[][] {
  const { safeMm, widthMm, heightMm } = geometry;
  const bottom = heightMm - safeMm;
  const width = widthMm - 2 * safeMm;
  const sides: Block[][] = [];
  let side: Block[] = [];
  let baseline: number | undefined;
  const begin = (): void => {
    side = [];
    sides.push(side);
    const head = sides.length === 1 ? plan.content.name : plan.words.pages.cards.continued(plan.content.name, sides.length);
    const placed = placedText({ setting: { face: "serif", sizePt: 9, leadingPt: 10 }, lines: wrappedLines(head, width, { face: "serif", sizePt: 9 }, plan.measure) }, safeMm, safeMm);
    side.push({ tag: "P", marks: placed.marks });
    baseline = placed.baselineMm;
  };
  begin();
  const paragraphs = backParagraphs(plan, left, geometry.type);
  const leadMm = Math.max(0, ...paragraphs.map(({ lead, face, sizePt }) => (lead === undefined ? 0 : plan.measure(lead, face, sizePt)))) + 1.5;
  for (const { tag, text, lead, face, sizePt, ink, language, gapMm } of paragraphs) {
    const setting = { face, sizePt, leadingPt: sizePt * 1.16 };
    const indent = lead === undefined ? 0 : leadMm;
    let lines = wrappedLines(text, width - indent, setting, plan.measure);
    let isFirst = true;
    while (lines.length > 0) {
      const top = (baseline ?? safeMm) + gapMm;
      const room = Array.from(lines.keys()).filter((i) => top + capitalsToBaselineMm({ setting, lines: lines.slice(0, i + 1) }) <= bottom + 1e-6).length;
      // A line alone at the foot or the head of a side reads badly: the whole paragraph goes over.
      if (room < lines.length && (room < 2 || lines.length - room < 2)) {
        if (side.length > 1) { begin(); continue; }
      }
      const taken = lines.slice(0, Math.max(1, room));
      const placed = placedText({ setting, lines: taken }, safeMm + indent, top, ink);
      const leadMark = isFirst && lead !== undefined && placed.marks[0] !== undefined ? [{ ...placed.marks[0], text: lead, xMm: safeMm, ink: QUIET }] : [];
      side.push({ tag, ...(language === undefined ? {} : { language }), marks: [...leadMark, ...placed.marks] });
      baseline = placed.baselineMm;
      lines = lines.slice(taken.length);
      isFirst = false;
      if (lines.length > 0) begin();
    }
  }
  return sides;
}

function backParagraphs({ content, revision, words }: CardPlan, left: LeftOver, type: number): Paragraph[] {
  const cautionPt = Math.max(CAUTION_MIN_PT, 7 * Math.min(1.1, type));
  const notePt = 6 * Math.min(1.1, type);
  const { cards: text } = words.pages;
  const { label } = content;
  const caution = (said: string, more: Partial<Paragraph> = {}): Paragraph => ({ tag: "P", text: said, face: "sans", sizePt: cautionPt, gapMm: 1.25, ...more });
  const note = (said: string, gapMm = 1.1): Paragraph => ({ tag: "P", text: said, face: "sans", sizePt: notePt, gapMm });
  const statements = [...label.statements, ...label.precautions].flatMap(({ code, texts }): Paragraph[] => texts.map((one, i) => caution(one.text, { ...(i === 0 ? { lead: code } : { lead: "" }), ...(one.language === words.language ? {} : { language: one.language }), gapMm: i === 0 ? 1.15 : 1 })));
  return [
    ...(left.sentence ? [note(content.sentence)] : []),
    ...(left.facts ? CARD_FACTS.map((name) => note(`${content.facts[name].name}: ${content.facts[name].text} (${words.standings[content.facts[name].standing].word})`)) : []),
    ...(left.sizes && content.sizes.length > 0 ? [note(content.sizes.map(({ size: ml, price }) => (price === undefined ? ml : `${ml} ${price}`)).join(", "))] : []),
    ...(label.signalWords.length === 0 ? [] : [caution(label.signalWords.join(" \u00b7 "), { tag: "H3", face: "sans bold", gapMm: 1.9 })]),
    ...statements,
    ...(label.unknown === undefined ? [] : [caution(label.unknown, { gapMm: 1.6 })]),
    ...(content.rags === undefined ? [] : [caution(content.rags, { gapMm: 1.7 })]),
    ...(content.poisonCentre === undefined ? [] : [caution(content.poisonCentre, { gapMm: 1.7 })]),
    caution(content.deference, { gapMm: 1.7 }),
    ...(label.basis === undefined ? [] : [note(label.basis, 1.5)]),
    note(content.drawdownNote, label.basis === undefined ? 1.5 : 1.1),
    ...(isAdapted(content) ? [note(text.approximateNote)] : []),
    note([...content.imprint, text.revision(revision)].join(" \u00b7 ")),
  ];
}

function isAdapted({ masstone, tints }: CardPlan["content"]): boolean {
  return [...(masstone === undefined ? [] : [masstone]), ...tints].some(({ approximate }) => approximate);
}
