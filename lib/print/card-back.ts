import { CARD_FACTS, type CardStatement } from "./card-content.ts";
import type { LeftOver } from "./card-front.ts";
import { CAUTION_MIN_PT, TEXT_MIN_PT, type CardGeometry, type CardPlan } from "./card-plan.ts";
import type { Flow } from "./layout-tree.ts";
import { movedTo, type Tagged } from "./mark.ts";
import { pageCount, placedPieces, type PlacedPiece } from "./paper-columns.ts";
import { bold, paragraph, sans, wholeParagraph, type PaperStyle } from "./paper-style.ts";
import type { Run } from "./set-runs.ts";

/** How far apart paragraphs and lines stand, and whether what the sheet says as well is said here. */
interface Attempt {
  readonly tightness: number;
  readonly further: boolean;
  /** What no front has room for and no card has to say: where in a painting the paint belongs, and how strong it is. */
  readonly beside: readonly ("layers" | "strength")[];
  /** Poison centre and what the card defers to in one paragraph, and what it rests on in another. */
  readonly isRunIn?: boolean;
}

/** From roomy, in larger letters, to tight; cautions stand in every one, and what no card has to say only before it has to be tight. */
const TRIES: readonly Attempt[] = [
  ...([["layers", "strength"], ["layers"]] as const).flatMap((beside) =>
    [1.8, 1.4, 1, 0.7].map((tightness) => ({ tightness, further: true, beside })),
  ),
  ...[true, false].flatMap((further) =>
    [1, 0.7, 0.4].map((tightness) => ({ tightness, further, beside: [] })),
  ),
  ...[true, false].flatMap((further) =>
    [0.7, 0.4].map((tightness) => ({ tightness, further, beside: [], isRunIn: true })),
  ),
];

/**
 * The back: what the front left to it, statements in full, rags, poison centre, and at the
 * foot the lines that say what all of it rests on. Where one side is too small it goes
 * on over to the next: a caution is never cut short.
 * @returns the elements of each side needed.
 */
export function cardBack(plan: CardPlan, geometry: CardGeometry, left: LeftOver): Tagged[][] {
  const { layers, strength, ...content } = plan.content;
  const all = { layers, strength };
  const setIn = ({ tightness, further, beside, isRunIn = false }: Attempt): Tagged[][] => {
    const said = Object.fromEntries(
      beside.flatMap((key) => (all[key] === undefined ? [] : [[key, all[key]]])),
    );
    return sides(
      { ...plan, content: { ...content, ...said } },
      geometry,
      further ? left : NOTHING_LEFT,
      { tightness, isRunIn },
    );
  };
  let found: Tagged[][] = [];
  for (const attempt of TRIES) {
    const set = setIn(attempt);
    if (found.length === 0 || set.length < found.length) found = set;
    if (found.length === 1) break;
  }
  return found;
}

/** How a back is set. */
type Setting = Required<Pick<Attempt, "tightness" | "isRunIn">>;

const NOTHING_LEFT: LeftOver = { statements: true, facts: false, sentence: false };

function sides(
  plan: CardPlan,
  { safeMm, widthMm, heightMm, type }: CardGeometry,
  left: LeftOver,
  setting: Setting,
): Tagged[][] {
  const { tightness } = setting;
  const bottomMm = heightMm - safeMm + 0.6;
  const style: PaperStyle = {
    widthMm: widthMm - 2 * safeMm,
    sizePt: Math.max(CAUTION_MIN_PT, 7.2 * type * (0.85 + 0.15 * tightness)),
    paints: new Map(),
    words: plan.words.pages.sheetPaper,
  };
  const notes = backNotes(plan, style, setting);
  const head = (text: string) =>
    wholeParagraph([{ text, face: "serif" }], style, { sizePt: 9, leading: 1.15, beforeMm: 0 });
  const flow: Flow = {
    kind: "group",
    tag: "Sect",
    runningHead: {
      piece: head(plan.words.pages.cards.continued(plan.content.name)),
      at: "page",
    },
    children: [head(plan.content.name), ...backParagraphs(plan, style, left, setting), ...notes],
  };
  const placed = placedPieces([flow], (page) => ({
    page,
    xMm: safeMm,
    topMm: safeMm - 0.6,
    bottomMm,
  }));
  const lowered = pageCount(placed) === 1 ? notesAtFoot(placed, notes.length, bottomMm) : placed;
  return Array.from({ length: pageCount(placed) }, (_, page) =>
    lowered.filter((place) => place.page === page).flatMap(elementsOf),
  );
}

/** Notes stand at the foot of a side that has room. */
function notesAtFoot(
  placed: readonly PlacedPiece[],
  count: number,
  bottomMm: number,
): PlacedPiece[] {
  const last = placed.at(-1);
  const by = last === undefined ? 0 : bottomMm - last.yMm - last.piece.heightMm;
  return placed.map((place, i) =>
    i < placed.length - count ? place : { ...place, yMm: place.yMm + by },
  );
}

function elementsOf({ piece, xMm, yMm, heads }: PlacedPiece): Tagged[] {
  return [
    ...heads.map((head) => movedTo(head.piece.content, xMm, head.yMm)),
    movedTo(piece.content, xMm, yMm),
  ];
}

function backParagraphs(
  { content, words }: CardPlan,
  style: PaperStyle,
  left: LeftOver,
  { tightness, isRunIn }: Setting,
): Flow[] {
  const { label, facts } = content;
  const leading = 1.12 + 0.08 * tightness;
  const said = (runs: readonly Run[], beforeMm = 1.6, language?: string): Flow =>
    paragraph(runs, style, {
      leading,
      beforeMm: 0.3 + (beforeMm - 0.3) * tightness,
      ...(language !== undefined && { language }),
    });
  const statements = (own: readonly CardStatement[]): Flow[] =>
    own.flatMap(({ code, texts }) =>
      texts.map(({ language, text }, i) =>
        said(
          [...(code === undefined || i > 0 ? [] : bold(`${code}\u00a0`)), ...sans(text)],
          0.7,
          language === words.language ? undefined : language,
        ),
      ),
    );
  const told = CARD_FACTS.map(
    (name) => `${facts[name].name}${words.colon}${words.lowerFirst(facts[name].text)}`,
  );
  return [
    ...(left.sentence ? [said(sans(content.sentence))] : []),
    ...(left.facts ? [said(sans(`${told.join(words.semicolon)}.`))] : []),
    ...(label.signalWords.length === 0 ? [] : [said(bold(label.signalWords.join(" \u00b7 ")), 2)]),
    ...statements(label.statements),
    ...statements(label.precautions),
    ...(content.strength === undefined ? [] : [said(sans(content.strength))]),
    ...(content.layers === undefined ? [] : [said(sans(content.layers))]),
    ...(content.rags === undefined ? [] : [said(sans(content.rags.full))]),
    ...(isRunIn
      ? [`${content.poisonCentre} ${content.deference}`]
      : [content.poisonCentre, content.deference]
    ).map((text) => said(sans(text))),
  ];
}

/** What the card rests on, small: each a line or two that is never parted. */
function backNotes(
  { content, revision, words }: CardPlan,
  style: PaperStyle,
  { tightness, isRunIn }: Setting,
): readonly ReturnType<typeof wholeParagraph>[] {
  const { cards: text } = words.pages;
  const { label, masstone, tints, drawdownNote, lot, imprint } = content;
  const isAdapted = [masstone, ...tints.map(({ colour }) => colour)].some(
    (colour) => colour?.isAdapted === true,
  );
  const notes = [
    ...(label.basis === undefined ? [] : [label.basis]),
    isAdapted ? `${drawdownNote} ${text.approximateNote}` : drawdownNote,
    [...(lot === undefined ? [] : [lot]), ...imprint, text.revision(revision)].join(" \u00b7 "),
  ];
  return (isRunIn ? [notes.join(" ")] : notes).map((note, i) =>
    wholeParagraph(sans(note), style, {
      sizePt: TEXT_MIN_PT,
      leading: 1.18,
      beforeMm: (i === 0 ? 2 : 0.6) * tightness,
    }),
  );
}
