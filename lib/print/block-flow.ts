import type { Block, LineView, SectionBlock } from "../blocks/block.ts";
import type { CautionView } from "../present/handling-views.ts";
import type { SvgNode } from "../plots/svg.ts";
import type { PhotographView, StandingView } from "../present/views.ts";
import { pictureHeightMm, pictureWords } from "./draw-picture.ts";
import { furtherLanguages, labelFlow, partLabelFlow } from "./label-elements.ts";
import { ladderFigure } from "./ladder-figure.ts";
import type { Flow } from "./layout-tree.ts";
import { elementsOf, markupTree, textOf } from "./markup-tree.ts";
import {
  bold,
  figurePiece,
  LEAST_PT,
  linkRun,
  list,
  paragraph,
  prose,
  quiet,
  sans,
  section,
  smallPt,
  subHeading,
  wholeParagraph,
  type PaperStyle,
} from "./paper-style.ts";
import { plainTable, propertyTable } from "./paper-table.ts";
import type { Run } from "./set-runs.ts";
import { panelFigure } from "./tints-figure.ts";
import { wallFigure } from "./wall-figure.ts";
import { MM_PER_PT } from "./mark.ts";
import { given } from "../quantities/given.ts";

type Kind = Block["kind"];
type OfKind<K extends Kind> = Extract<Block, { readonly kind: K }>;
type Laid = { readonly [K in Kind]: (block: OfKind<K>, style: PaperStyle) => readonly Flow[] };

const NOTHING = (): readonly Flow[] => [];

/** How paper lays out each kind of block. What only leads on to other pages, or is worked in a browser, is not on paper. */
const LAID: Laid = {
  heading: ({ text, index }, style) => [
    subHeading(
      index === undefined ? text : [...bold(text), { text: ` ${index}`, face: "sans" }],
      style,
    ),
  ],
  statement: ({ role, text, standing, link, quote }, style) => {
    if (role === "way") return [];
    const face = role === "note" ? "sans" : "serif";
    const runs: Run[] = [
      { text, face },
      ...(quote === undefined ? [] : [{ text: ` ${style.words.quoted(quote)}`, face } as const]),
      ...(standing === undefined ? [] : standingRuns(standing)),
      ...(text === "" && link !== undefined ? [linkRun(link, style, face)] : []),
    ];
    return [paragraph(runs, style, role === "note" ? { sizePt: smallPt(style) } : {})];
  },
  figures: ({ table }, style) => propertyTable({ ...table, caption: "" }, style.words, style),
  table: ({ table }, style) => [plainTable(table, style)],
  swatches: (tints, style) => [panelFigure({ tints }, style)],
  ladder: (block, style) => [
    subHeading(block.name, style),
    ...ladderFigure(block, style),
    paragraph(prose(block.sentence), style, { beforeMm: 0.8 }),
    ...block.remarks.map((remark) => paragraph(quiet(remark), style, { sizePt: smallPt(style) })),
  ],
  plots: ({ plots }, style) => plots.flatMap((plot) => plotFlow(plot, style)),
  list: ({ list: { heading, items } }, style) => [
    ...(heading === "" ? [] : [subHeading(heading, style)]),
    list(
      items.map(({ text, standing }) => ({
        runs: [...prose(text), ...(standing === undefined ? [] : standingRuns(standing))],
      })),
      style,
    ),
  ],
  lines: ({ lines }, style) => [
    list(
      lines.map((line) => ({ runs: lineRuns(line, style) })),
      style,
      { marker: "" },
    ),
  ],
  fold: ({ isPrinted, blocks }, style) => (isPrinted === true ? blockFlow(blocks, style) : []),
  label: ({ label, isOfPart }, style) =>
    isOfPart === true ? partLabelFlow(label, style) : labelFlow(label, style),
  cautions: ({ operations }, style) => [
    list(
      operations.map(({ operation, cautions }) => ({
        runs: [
          ...bold(`${operation}${style.words.colon}`),
          ...sans(cautions.map(cautionText).join(" ")),
        ],
      })),
      style,
      { marker: "", sizePt: smallPt(style) },
    ),
  ],
  terms: ({ terms }, style) => [
    list(
      terms.map(({ term, gloss }) => ({
        runs: [...bold(`${term}${style.words.colon}`), ...sans(gloss)],
      })),
      style,
      { marker: "", sizePt: smallPt(style) },
    ),
  ],
  prose: ({ body }, style) =>
    elementsOf(markupTree(body), "p", "li", "h1", "h2", "h3", "h4", "h5", "h6", "pre", "td").map(
      (element) => paragraph(prose(textOf(element).replace(/\s+/g, " ").trim()), style),
    ),
  wall: (block, style) => (block.form === "tints" ? wallFigure(block, style) : []),
  photographs: ({ photographs: [first] }, style) =>
    first === undefined ? [] : photographFlow(first, style),
  group: ({ blocks }, style) => blockFlow(blocks, style),
  key: NOTHING,
  links: NOTHING,
  cards: NOTHING,
  sources: NOTHING,
  reckoner: NOTHING,
  entries: NOTHING,
  board: NOTHING,
};

/** Blocks as paper lays them out, in their order; a heading of what is not on paper goes as well. */
function blockFlow(blocks: readonly Block[], style: PaperStyle): Flow[] {
  const laid = blocks.map((block) => ({ block, flow: laidOut(block, style) }));
  const isOnPaper = (at: number): boolean => {
    const [one, next] = [laid[at], laid[at + 1]];
    if (one === undefined || one.flow.length === 0) return false;
    if (one.block.kind !== "heading") return true;
    const isDeeper = next?.block.kind !== "heading" || next.block.level > one.block.level;
    return isDeeper && isOnPaper(at + 1);
  };
  return laid.flatMap(({ block, flow }, i) => {
    if (!isOnPaper(i)) return [];
    const isNote = block.kind === "statement" && block.role === "note";
    return isNote && laid[i - 1]?.block.kind === "heading" && i < laid.length - 1
      ? flow.map(keptWithNext)
      : flow;
  });
}

/** A short note below a heading is no more than a part of it. */
function keptWithNext(flow: Flow): Flow {
  return flow.kind === "piece" ? { ...flow, keepWithNext: true } : flow;
}

/** In one style a block is laid out once, however many tries at a sheet it stands in. */
const LAID_OUT = new WeakMap<PaperStyle, WeakMap<Block, readonly Flow[]>>();

function laidOut<K extends Kind>(block: OfKind<K>, style: PaperStyle): readonly Flow[] {
  const ofStyle = LAID_OUT.get(style) ?? new WeakMap<Block, readonly Flow[]>();
  LAID_OUT.set(style, ofStyle);
  const lay = LAID[block.kind] as (block: OfKind<K>, style: PaperStyle) => readonly Flow[];
  const flow = ofStyle.get(block) ?? lay(block, style);
  ofStyle.set(block, flow);
  return flow;
}

/** Sections as paper lays them out, without those that have nothing on paper; what a label says in further languages closes its section. */
export function sectionFlow(sections: readonly SectionBlock[], style: PaperStyle): Flow[] {
  return sections.flatMap(({ heading, blocks }) => {
    const flow = [
      ...blockFlow(blocks, style),
      ...blocks.flatMap((block) =>
        block.kind === "label" && block.isOfPart !== true
          ? furtherLanguages(block.label, style)
          : [],
      ),
    ];
    return flow.length === 0 ? [] : [section(heading, style, flow)];
  });
}

function standingRuns({ word }: StandingView): Run[] {
  return quiet(` ${word}`);
}

function lineRuns({ name, sentences }: LineView, { words }: PaperStyle): Run[] {
  return [
    ...bold(`${name}${words.colon}`),
    ...sentences.flatMap(({ text, standing }, i): Run[] => [
      ...prose(i === 0 ? text : ` ${text}`),
      ...(standing === undefined ? [] : standingRuns(standing)),
    ]),
  ];
}

/** A poison is a reason to print; any other is left to the site. */
function cautionText({ sentences, reason, isGrave }: CautionView): string {
  return given([...sentences, isGrave === true && reason]).join(" ");
}

/** User units of a picture's text; drawn so that it comes out at the least size that paper bears. */
const TEXT_UNITS = 12;
const MM_PER_UNIT = ((LEAST_PT + 0.5) * MM_PER_PT) / TEXT_UNITS;

type Plot = OfKind<"plots">["plots"][number];

/** Every size of type tries a picture, which is read back once. */
const TREES = new WeakMap<Plot, SvgNode>();

function treeOf(plot: Plot): SvgNode | undefined {
  const tree = TREES.get(plot) ?? elementsOf(markupTree(plot.narrow ?? plot.svg), "svg").at(0);
  if (tree !== undefined) TREES.set(plot, tree);
  return tree;
}

/** A picture of the page under its caption, in the paints' own Lab; none that the column would make too small to read. */
function plotFlow(plot: Plot, style: PaperStyle): Flow[] {
  const tree = treeOf(plot);
  if (tree === undefined) return [];
  const natural = Number(tree.attributes["width"]) * MM_PER_UNIT;
  const widthMm = Math.min(style.widthMm, natural);
  if (widthMm < natural * (LEAST_PT / (LEAST_PT + 0.5))) return [];
  const words = pictureWords(tree);
  return [
    wholeParagraph(quiet(plot.caption ?? words[0]), style, {
      tag: "Caption",
      sizePt: smallPt(style),
      beforeMm: 2.5,
      keepWithNext: true,
    }),
    figurePiece(
      words.join(". "),
      pictureHeightMm(tree, widthMm),
      [{ kind: "picture", tree, xMm: 0, yMm: 0, widthMm, paints: style.paints }],
      { beforeMm: 1 },
    ),
  ];
}

/** Pixels to an inch that print asks for: with fewer a photograph is set smaller. */
const DPI = 300;
const MM_PER_INCH = 25.4;

/** The first photograph alone, with what is said of it: the others are on the page. */
function photographFlow(
  { alt, caption, remarks, paper }: PhotographView,
  style: PaperStyle,
): Flow[] {
  const widthMm = Math.min(style.widthMm, (paper.widthPx / DPI) * MM_PER_INCH);
  const heightMm = (widthMm * paper.heightPx) / paper.widthPx;
  const said = [...caption.map(({ text }) => text), ...remarks].join(" ");
  return [
    {
      ...figurePiece(alt, heightMm, [
        { kind: "photograph", hash: paper.hash, xMm: 0, yMm: 0, widthMm, heightMm },
      ]),
      keepWithNext: true,
    },
    wholeParagraph(quiet(said), style, {
      tag: "Caption",
      sizePt: smallPt(style),
      beforeMm: 1,
    }),
  ];
}
