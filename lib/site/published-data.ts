import type { PastChange, PublishedPrices, SaidTexts } from "../changes/published-state.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { madeOfText } from "../pages/made-of.ts";
import type { PageContext } from "../pages/page-context.ts";
import { offerViews, plainSentence } from "../pages/sheet-page.ts";
import { lightfastnessWord } from "../present/lightfastness-word.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { statementText } from "../present/statement-text.ts";
import type { Photograph } from "../records/photographs.ts";
import type { Records } from "../records/records.ts";
import { revision as contentRevision } from "../sheet/revision.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { WorkedSite } from "./site-context.ts";
import { MANIFEST_KINDS } from "./output-manifest.ts";
import { SCHEMA_VERSION } from "./schema-version.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

/** A sheet as it goes out, with the revision that its content gives it. */
export interface PublishedSheet {
  readonly worded: SheetTexts;
  readonly revision: string;
  /** The nearest in daylight; `metamerism` for those that pass for the same there. */
  readonly neighbours: readonly {
    readonly slug: string;
    readonly deltaE00: number;
    readonly samePigment: boolean;
    readonly metamerism?: {
      readonly daylight: number;
      readonly lamplight: number;
      readonly index: number;
    };
  }[];
}

/** The contract's sheet.json: plain values at their paths, then the evidence of each, then what is not stated. */
export function sheetJson({ worded, revision, neighbours }: PublishedSheet): string {
  const { values, evidence, notStated } = worded.plain;
  const { slug, name, ...sections } = values as { slug: string; name: string } & Record<
    string,
    unknown
  >;
  return json({
    schemaVersion: SCHEMA_VERSION,
    slug,
    name,
    revision,
    ...sections,
    neighbours,
    evidence,
    notStated,
  });
}

export function catalogueJson(
  published: readonly PublishedSheet[],
  { workshop, colours }: Records,
): string {
  return json({
    schemaVersion: SCHEMA_VERSION,
    workshop: {
      name: workshop.name,
      ...(workshop.siteAddress !== undefined && { siteAddress: workshop.siteAddress }),
      ...(workshop.demonstration === true && { demonstration: true }),
    },
    colours: published.map(({ worded: { sheet } }) => ({
      slug: sheet.slug,
      name: sheet.name,
      url: `colours/${sheet.slug}/`,
      sheet: `colours/${sheet.slug}/sheet.json`,
      ...(sheet.discontinued !== undefined && { discontinued: sheet.discontinued }),
      ...replacement(colours.get(sheet.slug)?.record.replacedBy),
    })),
  });
}

function replacement(replacedBy: string | undefined): { readonly replacedBy?: string } {
  return replacedBy === undefined ? {} : { replacedBy };
}

/** What each sheet and each answer states, in short: enough to tell later what a customer would see differ. */
export function stated(worked: WorkedSite) {
  const { published, context } = worked;
  const { records } = context;
  const summaries = new Map(context.answers.map(({ slug, summary }) => [slug, summary]));
  return {
    figures: [...STATED],
    sheets: published.map((one) => statedOfSheet(one, worked)),
    former: (records.workshop.former ?? []).flatMap(({ address, replacedBy }) => {
      const [slug, own] = [address, replacedBy].map((page) => colourOf(page));
      return slug === undefined || own === undefined ? [] : [{ slug, replacedBy: own }];
    }),
    answers: [...records.answers.values()].map(({ slug, record: { question, summary }, body }) => ({
      slug,
      question,
      revision: contentRevision({ question, summary, body }),
      said: { summary: summaries.get(slug) ?? "" },
    })),
  };
}

/** The slug of the colour whose sheet lies at an address. */
function colourOf(address: string | undefined): string | undefined {
  return /^colours\/([^/]+)\/$/.exec(address ?? "")?.[1];
}

const STATED_MODULES = ["lib/site/published-data.ts", "lib/words/languages.ts"];

/** What one sheet states. */
export function statedOfSheet(one: PublishedSheet, { context, steps }: WorkedSite) {
  return madeStep(
    steps,
    { modules: STATED_MODULES, name: "what sheets state", of: one.worded.sheet.slug },
    () => statedOf(one, context),
  );
}

function statedOf({ worded: { sheet, plain }, revision }: PublishedSheet, context: PageContext) {
  const { words, records } = context;
  return {
    slug: sheet.slug,
    name: sheet.name,
    revision,
    states: Object.fromEntries(
      plain.evidence
        .filter(({ figure }) => STATED.has(String(figure)))
        .map(({ figure, text }) => [String(figure), text]),
    ),
    said: colourSaid(sheet, context),
    photographs: photographsOf(sheet.slug, records).map(({ record: { of, date } }) =>
      [words.pages.photographs.of[of], ...(date === undefined ? [] : [words.date(date)])].join(
        ", ",
      ),
    ),
    cautions: {
      signalWord: sheet.cautions.signalWord,
      pictograms: sheet.cautions.pictograms,
      hazardStatements: sheet.cautions.hazardStatements,
      precautionaryStatements: sheet.cautions.precautionaryStatements,
      supplemental: sheet.cautions.supplemental,
      studio: [...new Set(sheet.cautions.studio.map((one) => statementText(one, words)))],
    },
    sizes: offerViews(sheet, words).map(({ text, size, price }) =>
      price === undefined ? text : `${size} ${price}`,
    ),
    ...pricesOf(sheet),
    ...(sheet.discontinued !== undefined && { discontinued: sheet.discontinued }),
  };
}

/** Prices as numbers, which are compared from one publishing to the next. */
function pricesOf({ offer }: Sheet): { readonly prices?: PublishedPrices } {
  if (offer?.currency === undefined) return {};
  const sizes = offer.sizes.flatMap(({ ml, price }) =>
    price === undefined ? [] : [{ ml, price }],
  );
  return sizes.length === 0 ? {} : { prices: { currency: offer.currency, sizes } };
}

/** What the first screen of a sheet says in words. */
function colourSaid(sheet: Sheet, context: PageContext): NonNullable<SaidTexts> {
  const { words } = context;
  const light = lightfastnessWord(sheet.permanence, words);
  return {
    madeOf: madeOfText(sheet, words),
    sentence: plainSentence(sheet, context),
    ...(light !== undefined && { lightfastness: `${light.word} (${light.detail})` }),
  };
}

/** Those of a colour, and of its lots. */
function photographsOf(colour: string, { photographs, lots }: Records): readonly Photograph[] {
  return photographs.filter(
    ({ owner: { folder, slug } }) =>
      (folder === "colours" && slug === colour) ||
      (folder === "lots" && lots.get(slug)?.record.colour === colour),
  );
}

/**
 * What a site states, and each of its cards: marks a folder as ours, and is what a later build is held against.
 * @param changes since an earlier manifest and before it, where one was named
 */
export function manifestJson(
  { cards: { cards, without }, context: { date } }: WorkedSite,
  states: ReturnType<typeof stated>,
  changes: readonly PastChange[] | undefined,
): string {
  return json({
    kind: MANIFEST_KINDS.site,
    schemaVersion: SCHEMA_VERSION,
    ...(date !== undefined && { date }),
    ...states,
    cards: cards.map(({ slug, name, revision, states: own }) => ({
      slug,
      name,
      revision,
      states: own,
    })),
    withoutCard: without,
    ...(changes !== undefined && { changes }),
  });
}

/** What tells the folder of the workshop's own pages from any other, and from a site. */
export function workshopManifestJson(date: string | undefined): string {
  return json({
    kind: MANIFEST_KINDS.workshop,
    schemaVersion: SCHEMA_VERSION,
    ...(date !== undefined && { date }),
  });
}

/** What a PDF was drawn from, and what came out: the next build draws it anew only when the first differs. */
export interface PaperState {
  readonly path: string;
  readonly key: string;
  readonly hash: string;
}

/** A manifest that knows what was printed. */
export function manifestWithPapers(manifest: string, papers: readonly PaperState[]): string {
  return json({ ...(JSON.parse(manifest) as object), papers });
}

/** The figures that a customer chooses by: those of the first screen, and what a sheet says of hiding and of an exposure. */
const STATED: ReadonlySet<string> = new Set<SheetPath>([
  "notations.masstone.munsell.text",
  "notations.masstone.nbsName",
  "permanence.category",
  "permanence.expectation",
  "permanence.deltaEab",
  "optics.opacityClass",
  "optics.contrastRatio",
  "optics.hidingFilmUm",
  "optics.coverageCm2PerMl",
  "optics.tintingStrength",
  "drying.class",
  "drying.touchDryDays",
  "oil.oilIndexClass",
  "oil.oilIndexGPer100g",
  "oil.finish",
]);

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 1)}\n`;
}
