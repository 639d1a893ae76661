import { CARD_FACTS } from "./card-content.ts";
import { CardTooLarge } from "./card-fault.ts";
import { cardPanel } from "./card-panel.ts";
import { CAUTION_MIN_PT, TEXT_MIN_PT, type CardGeometry, type CardPlan } from "./card-plan.ts";
import { labelElements } from "./label-elements.ts";
import type { Piece } from "./layout-tree.ts";
import { GREY, movedTo, shifted, type Tagged } from "./mark.ts";
import { bold, sans, setPiece } from "./paper-style.ts";
import { measureText } from "./print-document.ts";
import { QR_QUIET_MODULES, qrFigure } from "./qr-figure.ts";
import {
  fittedRuns,
  naturalWidths,
  setRuns,
  sizesDown,
  type Run,
  type RunSetting,
  type SetRuns,
} from "./set-runs.ts";

/** What a front left to the back. */
export interface LeftOver {
  readonly statements: boolean;
  readonly facts: boolean;
  readonly sentence: boolean;
}

export interface Front {
  readonly elements: readonly Tagged[];
  readonly left: LeftOver;
}

/** What one try puts on the front, and how tightly. */
interface Attempt {
  readonly tightness: number;
  readonly statements: boolean;
  readonly ragsInWords: boolean;
  /** A row each, one behind another, or on the back. */
  readonly facts: "rows" | "run in" | "overleaf";
  readonly sentence: boolean;
}

const ROOMY: Attempt = {
  tightness: 1,
  statements: true,
  ragsInWords: true,
  facts: "rows",
  sentence: true,
};
const at =
  (...tightnesses: readonly number[]) =>
  (attempt: Attempt): Attempt[] =>
    tightnesses.map((tightness) => ({ ...attempt, tightness }));
const OVERLEAF = { ...ROOMY, statements: false };
const SHORT = { ...OVERLEAF, ragsInWords: false };

/** From roomy to tight; then statements, facts and sentence go to the back, in that order. Name, price, symbols, word and rags never do. */
const TRIES: readonly Attempt[] = [
  ...at(1, 0.93)(ROOMY),
  ...at(1, 0.93)(OVERLEAF),
  ...at(1, 0.93, 0.86, 0.8, 0.74, 0.68, 0.62)(SHORT),
  ...at(1, 0.93, 0.86, 0.8, 0.74, 0.68, 0.62, 0.56, 0.5)({ ...SHORT, facts: "run in" }),
  ...at(1, 0.9, 0.8)({ ...SHORT, facts: "overleaf" }),
  ...at(1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.45)({ ...SHORT, facts: "overleaf", sentence: false }),
];

/** Point sizes of a card of 90 x 55. */
const NAME_PT = 20;
const PRICE_PT = 15;
const SENTENCE_PT = 8.5;
const TEXT_PT = 7.4;
const QR_MM = 11.5;

/**
 * A card's front: the paint at the left, off three edges; at the right name, what it is made of,
 * the sentence, the facts, and at the foot label, price and rags beside the address.
 * @throws CardTooLarge for a size on which the least that a front holds finds no room.
 */
export function cardFront(plan: CardPlan, geometry: CardGeometry): Front {
  for (const attempt of TRIES) {
    const column = textColumn(plan, geometry, attempt);
    if (column === undefined) continue;
    return {
      elements: [...column.head, ...cardPanel(plan, geometry), ...column.rest],
      left: {
        statements: !attempt.statements,
        facts: attempt.facts === "overleaf",
        sentence: !attempt.sentence,
      },
    };
  }
  throw new CardTooLarge(
    plan.size.name,
    plan.content.slug,
    "name, pigments, price, symbols and signal word",
  );
}

interface TextColumn {
  readonly head: readonly Tagged[];
  readonly rest: readonly Tagged[];
}

function textColumn(
  plan: CardPlan,
  geometry: CardGeometry,
  attempt: Attempt,
): TextColumn | undefined {
  const { safeMm, panelMm, widthMm, heightMm } = geometry;
  const xMm = panelMm + safeMm;
  const width = widthMm - safeMm - xMm;
  const qr = address(plan, geometry);
  const [name, ...head] = headPieces(plan, geometry, attempt, width);
  if (name === undefined) return undefined;
  const foot = footPieces(plan, geometry, attempt, width - qr.widthMm);
  // A line's capitals begin below its top: the first one stands at the edge of the safe area.
  const top = safeMm - 0.22 * firstPt(name) * 0.3528;
  const placed = stacked([name, ...head], xMm, top);
  const under = stacked(foot, xMm, heightMm - safeMm + 0.6 - heightOf(foot));
  const isClear =
    placed.bottomMm + 1.4 * attempt.tightness <=
    Math.min(heightMm - safeMm + 0.6 - heightOf(foot), qr.topMm);
  if (!isClear) return undefined;
  const [title, ...more] = placed.elements;
  return {
    head: title === undefined ? [] : [title],
    rest: [...more, ...under.elements, ...qr.elements],
  };
}

function firstPt({ content: { marks = [] } }: Piece): number {
  const [first] = marks;
  return first?.kind === "text" ? first.sizePt : 0;
}

function heightOf(pieces: readonly Piece[]): number {
  return pieces.reduce(
    (sum, { heightMm, beforeMm }, i) => sum + heightMm + (i === 0 ? 0 : beforeMm),
    0,
  );
}

/** Pieces one under the other. */
function stacked(
  pieces: readonly Piece[],
  xMm: number,
  topMm: number,
): { readonly elements: readonly Tagged[]; readonly bottomMm: number } {
  let y = topMm;
  const elements = pieces.map(({ content, heightMm, beforeMm }, i) => {
    y += i === 0 ? 0 : beforeMm;
    const element = movedTo(content, xMm, y);
    y += heightMm;
    return element;
  });
  return { elements, bottomMm: y };
}

function headPieces(
  { content }: CardPlan,
  { type }: CardGeometry,
  { tightness, sentence, facts }: Attempt,
  widthMm: number,
): Piece[] {
  const scale = type * tightness;
  const pt = (size: number): number => Math.max(TEXT_MIN_PT, size * scale);
  const nameRun: Run[] = [{ text: content.name, face: "serif" }];
  const large = fittedRuns(nameRun, 1, sizesDown(NAME_PT * scale, 13.5 * scale), {
    widthMm,
    leading: 1.02,
  });
  const name =
    large.lines.length === 1
      ? large
      : fittedRuns(nameRun, 2, sizesDown(15 * scale, 8), { widthMm, leading: 1.05 });
  const made = (text: string) =>
    fittedRuns(sans(text), 2, [pt(TEXT_PT), TEXT_MIN_PT], {
      widthMm,
      leading: 1.15,
      isBalanced: true,
    });
  const inFull = made(content.madeOf);
  const madeOf = inFull.lines.length <= 2 && tightness > 0.65 ? inFull : made(content.indexNames);
  const said = setRuns([{ text: content.sentence, face: "serif italic" }], {
    widthMm,
    sizePt: pt(SENTENCE_PT),
    leading: 1.15,
    isBalanced: true,
  });
  return [
    setPiece(name, { tag: "H2" }),
    setPiece(madeOf, { beforeMm: 0.9 * tightness }),
    ...(sentence ? [setPiece(said, { beforeMm: 1.3 * scale })] : []),
    ...(facts === "overleaf"
      ? []
      : [
          (facts === "rows" ? factRows : factsRunIn)(
            content.facts,
            pt(TEXT_PT),
            widthMm,
            1.5 * scale,
          ),
        ]),
  ];
}

/** What each fact is called, and its few words beside it. */
function factRows(
  facts: CardPlan["content"]["facts"],
  sizePt: number,
  widthMm: number,
  beforeMm: number,
): Piece {
  const own = CARD_FACTS.map((name) => facts[name]);
  const labelMm = Math.max(...own.map(({ name }) => measureText(name, "sans", sizePt))) + 2;
  const setting: Omit<RunSetting, "widthMm"> = { sizePt, leading: 1.2 };
  let y = 0;
  const children = own.map(({ name, text }): Tagged => {
    const label = setRuns([{ text: name, face: "sans", ink: GREY }], { ...setting, widthMm });
    const words = setRuns(sans(text), { ...setting, widthMm: widthMm - labelMm });
    const row: Tagged = {
      tag: "LI",
      children: [
        { tag: "Lbl", marks: label.marks.map((mark) => shifted(mark, 0, y)) },
        { tag: "LBody", marks: words.marks.map((mark) => shifted(mark, labelMm, y)) },
      ],
    };
    y += words.heightMm;
    return row;
  });
  return { kind: "piece", heightMm: y, beforeMm, content: { tag: "L", children } };
}

/** The same one behind another, of a front that is low and wide. */
function factsRunIn(
  facts: CardPlan["content"]["facts"],
  sizePt: number,
  widthMm: number,
  beforeMm: number,
): Piece {
  const runs = CARD_FACTS.flatMap((name, i): Run[] => [
    ...(i === 0 ? [] : sans("\u00a0\u00b7 ")),
    unparted({ text: `${facts[name].name} `, face: "sans", ink: GREY }),
    ...sans(facts[name].text),
  ]);
  return setPiece(setRuns(runs, { widthMm, sizePt, leading: 1.2 }), { beforeMm });
}

/** Label, prices and rags, from the bottom up. */
function footPieces(
  { content }: CardPlan,
  { type }: CardGeometry,
  { tightness, statements, ragsInWords }: Attempt,
  widthMm: number,
): Piece[] {
  const { label, sizes, rags } = content;
  const cautionPt = Math.max(CAUTION_MIN_PT, TEXT_PT * type * tightness);
  const caution = (runs: readonly Run[]): Piece =>
    setPiece(setRuns(runs, { widthMm, sizePt: cautionPt, leading: 1.12 }), {
      beforeMm: 1.1 * tightness,
    });
  const hasLabel = label.signalWords.length + label.pictograms.length + label.statements.length > 0;
  return [
    ...(hasLabel
      ? [
          labelElements(
            {
              signalWord: label.signalWords.join(" \u00b7 "),
              pictograms: label.pictograms,
              statements: statements
                ? label.statements.flatMap(({ texts }) => texts.map((one) => ({ text: one.text })))
                : label.statements.length === 0
                  ? []
                  : [{ text: label.overleaf }],
            },
            { widthMm },
            {
              sideMm: Math.max(6, 8.5 * type * tightness),
              sizePt: cautionPt,
              wordPt: cautionPt + 1,
            },
          ),
        ]
      : []),
    ...(label.notice === undefined ? [] : [caution(bold(label.notice))]),
    ...(sizes.length === 0
      ? []
      : [
          setPiece(priceRuns(sizes, PRICE_PT * type * Math.max(0.55, tightness), widthMm), {
            beforeMm: 1 * tightness,
          }),
        ]),
    ...(rags === undefined ? [] : [caution(sans(ragsInWords ? rags.lead : rags.short))]),
  ];
}

function unparted(run: Run): Run {
  return { ...run, text: run.text.replaceAll(" ", "\u00a0") };
}

/** Prices with their sizes in a line each, or in two at most, as large as that allows. */
function priceRuns(sizes: CardPlan["content"]["sizes"], mostPt: number, widthMm: number): SetRuns {
  const setIn = (sizePt: number): SetRuns => {
    const small = Math.max(0.52, TEXT_MIN_PT / sizePt);
    const runs = sizes.flatMap(({ text, size = "", price, unitPrice }, i): Run[] => {
      const beside = (of: string): Run => ({ text: of, face: "sans", ink: GREY, scale: small });
      const offer: Run[] =
        price === undefined
          ? [{ text, face: "sans", scale: small }]
          : [
              { text: price, face: "sans bold" },
              beside(`\u00a0\u00a0${size}`),
              ...(unitPrice === undefined ? [] : [beside(` (${unitPrice})`)]),
            ];
      const isHeld = naturalWidths(offer, sizePt).greatestMm <= widthMm;
      return [...(i === 0 ? [] : sans("  ")), ...(isHeld ? offer.map(unparted) : offer)];
    });
    return setRuns(runs, { widthMm, sizePt, leading: 1.1 });
  };
  const tries = [mostPt, mostPt * 0.8, Math.max(7.5, mostPt * 0.6)].map(setIn);
  const within = (most: number) => tries.find(({ lines }) => lines.length <= most);
  return within(Math.min(2, sizes.length)) ?? within(2) ?? setIn(7.5);
}

/** The sheet's address as a QR code at the bottom right, its quiet zone inside the margin. */
function address(
  { content, qr, words }: CardPlan,
  { widthMm, heightMm, safeMm, type }: CardGeometry,
): { readonly elements: readonly Tagged[]; readonly topMm: number; readonly widthMm: number } {
  if (content.address === undefined || qr === undefined)
    return { elements: [], topMm: heightMm, widthMm: 0 };
  const darkMm = QR_MM * Math.min(1.3, type);
  const quietMm = (darkMm / qr.size) * QR_QUIET_MODULES;
  const [right, bottom] = [widthMm - safeMm, heightMm - safeMm];
  return {
    elements: [
      qrFigure(qr, words.pages.cards.address(content.address), {
        xMm: right - darkMm - quietMm,
        yMm: bottom - darkMm - quietMm,
        sideMm: darkMm + 2 * quietMm,
      }),
    ],
    topMm: bottom - darkMm - quietMm,
    widthMm: darkMm + quietMm + 0.5,
  };
}
