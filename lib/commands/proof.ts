import type { LaidCard } from "../print/card-layout.ts";
import { PAPER_SIZES, type CardSize } from "../print/card-size.ts";
import { inkKey, type ProcessInk, type Proof } from "../print/proof-inks.ts";
import { proofPdf } from "../print/proof-pdf.ts";
import type { SheetToPrint } from "../print/sheet-paper.ts";
import { inkProfile, processInks, SEEN_DELTA_E00 } from "../pictures/process-inks.ts";
import { benchPage, benchPath } from "../pages/bench-page.ts";
import { cautionLine } from "../pages/caution-line.ts";
import { pagePlace, type PageContext } from "../pages/page-context.ts";
import { sheetPage } from "../pages/sheet-page.ts";
import type { SheetView } from "../blocks/page-kinds.ts";
import type { WorkedSite } from "../site/site-context.ts";

/** A preview in process inks, and by how much these miss the colours that they can't show. */
interface DrawnProof {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** "bone-black: masstone by 5.8" */
  readonly missed: readonly string[];
}

/** Cards and sheets of some colours in process inks: drawn once to learn which colours there are, and then in their inks. */
export async function drawnProof(
  cards: readonly LaidCard[],
  size: CardSize,
  { context, published }: Pick<WorkedSite, "context" | "published">,
): Promise<DrawnProof> {
  const slugs = new Set(cards.map(({ slug }) => slug));
  const sheets = published
    .filter(({ worded: { sheet } }) => slugs.has(sheet.slug))
    .map(({ worded, revision }): SheetToPrint => {
      const { slug } = worded.sheet;
      return {
        slug,
        // Nothing of a proof is kept.
        key: () => revision,
        sheet: sheetPage(worded, context, pagePlace(`colours/${slug}/index.html`)),
        bench: benchPage(worded, revision, context, pagePlace(benchPath(slug))),
        caution: cautionLine(context),
        context,
      };
    });
  const drawn = proofPdf({ cards, size, sheets, paper: PAPER_SIZES[size.paper] }, context);
  const asked: Proof = {
    notice: context.words.pages.sheetPaper.proof,
    profile: await inkProfile(),
    inks: new Map(),
    wanted: new Map(),
  };
  drawn(asked);
  const wanted = [...asked.wanted];
  const found = await processInks(wanted.map(([, lab]) => lab));
  const inks = new Map(
    wanted.flatMap(([key], i) => {
      const ink = found[i];
      return ink === undefined ? [] : [[key, ink] as const];
    }),
  );
  return {
    ...drawn({ ...asked, inks, wanted: new Map() }),
    missed: sheets.flatMap(({ slug, sheet }) => missedOf(slug, sheet, inks, context)),
  };
}

function missedOf(
  slug: string,
  { masstone, tints }: SheetView,
  inks: ReadonlyMap<string, ProcessInk>,
  { words }: PageContext,
): string[] {
  const swatches = [
    { name: words.pages.sheetPage.alone, cell: masstone },
    ...(tints?.columns ?? []).flatMap(({ head, cells }) =>
      cells.map((cell, i) => ({ name: `${head}, ${tints?.rows[i] ?? ""}`, cell })),
    ),
  ];
  const missed = swatches.flatMap(({ name, cell: { colour } }) => {
    const lab = colour?.lab;
    const off = lab && inks.get(inkKey(lab))?.deltaE00;
    return off === undefined || off < SEEN_DELTA_E00 ? [] : [`${name} ${off.toFixed(1)}`];
  });
  return missed.length === 0 ? [] : [`${slug}: ${missed.join("; ")}`];
}
