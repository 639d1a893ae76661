import type { HandlingSectionView, HazardView, PictogramCode, PictogramView, StatementView } from "../present/views.ts";
import { rulingText } from "../present/ruling-text.ts";
import { statementText } from "../hazard/statement-text.ts";
import type { Words } from "../present/words/words.ts";
import type { CautionsSection } from "../sheet/sheet.ts";
import { sourceLink } from "./page-context.ts";
import { emptySection, type SheetPage } from "./sheet-parts.ts";

/** Handling in full: label elements first, then the studio by operation, then where it may be sold. */
export function handlingSection(page: SheetPage): HandlingSectionView {
  const { worded: { sheet: { cautions, pigments } }, words, context, place } = page;
  const text = words.pages.handling;
  const label = hazardView(cautions, words);
  const operations = [...new Set(cautions.studio.map(({ operation }) => operation))];
  const { poisonCentre } = context.records.workshop;
  return {
    ...emptySection("handling", words.pages.sections.handling),
    summary: [
      ...(cautions.unknown.length > 0 ? [text.unknown(cautions.unknown)] : []),
      ...(label === undefined && cautions.unknown.length === 0 ? [text.nothing] : []),
    ],
    labelHeading: cautions.basis === "worked out" ? text.workedOut : text.stated,
    ...(label === undefined ? {} : { label }),
    precautionaryHeading: text.precautions,
    precautionary: cautions.precautionaryStatements.map((code) => statementView(code, words)),
    traces: cautions.traces.map((trace) => ({
      statement: trace.statement, text: rulingText(trace, words), ...(trace.source === undefined ? {} : { source: sourceLink(context, place)(trace.source) }),
    })),
    dryPigments: cautions.dryPigment.map((dry) => {
      const name = pigments.find(({ slug }) => slug === dry.slug)?.name ?? dry.slug;
      const own = hazardView({ ...cautions, ...dry, basis: "worked out", supplemental: [] }, words);
      return { heading: text.dryPigment(name), ...(own === undefined ? { text: dry.known ? text.dryNothing : text.unknown([name]) } : { label: own }) };
    }),
    studioHeading: text.studio,
    studio: operations.map((operation) => ({
      operation: words.operations[operation] ?? operation,
      cautions: cautions.studio.filter((caution) => caution.operation === operation).map((caution) => ({ text: rulingText(caution, words), reason: rulingText(caution.reason, words) })),
    })),
    marketsHeading: text.markets,
    markets: cautions.restrictions.map((restriction) => ({
      market: text.marketNames[restriction.market] ?? restriction.market, text: rulingText(restriction, words),
      ...(restriction.source === undefined ? {} : { source: sourceLink(context, place)(restriction.source) }),
    })),
    ...(cautions.dataSheet?.url === undefined ? {} : { dataSheet: { text: text.dataSheet, href: cautions.dataSheet.url } }),
    ...(poisonCentre === undefined ? {} : { poisonCentre }),
    deference: words.pages.cautionLine,
  };
}

/** Label elements as they stand on the first screen; nothing when nothing is classified. */
export function hazardView(cautions: Pick<CautionsSection, "frame" | "edition" | "basis" | "signalWord" | "pictograms" | "hazardStatements" | "supplemental" | "dataSheet" | "sensitisers">, words: Words, handlingHref?: string): HazardView | undefined {
  const { signalWord, pictograms, hazardStatements, supplemental } = cautions;
  if (signalWord === null && hazardStatements.length === 0 && supplemental.length === 0) return undefined;
  const text = words.pages.handling;
  return {
    ...(signalWord === null ? {} : { signalWord: words.signalWords[signalWord] }),
    pictograms: pictograms.map((code): PictogramView => ({ code: code as PictogramCode, name: words.pictograms[code] ?? code })),
    statements: [...hazardStatements.map((code) => statementView(code, words)), ...supplemental.map((code) => statementView(code, words, cautions.sensitisers))],
    basis: cautions.basis === "worked out" ? text.basisWorkedOut(cautions.frame, cautions.edition) : text.basisStated(cautions.frame, cautions.dataSheet === undefined ? "" : words.date(cautions.dataSheet.date)),
    ...(handlingHref === undefined ? {} : { handlingHref }),
  };
}

function statementView(code: string, words: Words, sensitisers: readonly string[] = []): StatementView {
  return { code, text: statementText(code, words.language, sensitisers) };
}
