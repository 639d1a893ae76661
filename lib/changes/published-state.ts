/** What a manifest says that a site tells its customers, as far as two of them can be compared. */

/** Label elements and cautions of a sheet, each as one text or code. */
export interface PublishedCautions {
  readonly signalWord: string | null;
  readonly pictograms: readonly string[];
  readonly hazardStatements: readonly string[];
  readonly precautionaryStatements: readonly string[];
  readonly supplemental: readonly string[];
  readonly studio: readonly string[];
}

/** What a sheet says in a sentence, or an answer in short. */
export const SAID = ["madeOf", "sentence", "lightfastness", "summary"] as const;
export type Said = (typeof SAID)[number];
/** By what it says; undefined in a manifest that did not say any. */
export type SaidTexts = Readonly<Partial<Record<Said, string>>> | undefined;

export interface PublishedColour {
  readonly slug: string;
  readonly name: string;
  /** Changes with anything that the sheet says. */
  readonly revision: string;
  /** Finished text of figures, by path. */
  readonly states: Readonly<Record<string, string>>;
  readonly said: SaidTexts;
  /** What each photograph is of, and when it was taken; undefined in a manifest that did not say them. */
  readonly photographs: readonly string[] | undefined;
  /** Sizes with their prices, as the sheet prints them; undefined in a manifest that did not say them. */
  readonly sizes: readonly string[] | undefined;
  /** Undefined in a manifest that did not say them, and of a colour without prices. */
  readonly prices: PublishedPrices | undefined;
  readonly cautions: PublishedCautions;
  readonly discontinued: string | undefined;
}

export interface PublishedPrices {
  readonly currency: string;
  /** By contents [ml]. */
  readonly sizes: readonly { readonly ml: number; readonly price: number }[];
}

/** A colour that is gone, and what took its place. */
export interface FormerColour {
  readonly slug: string;
  readonly replacedBy: string;
}

export interface PublishedAnswer {
  readonly slug: string;
  readonly question: string;
  /** Changes with question, summary and text. */
  readonly revision: string;
  readonly said: SaidTexts;
}

/** One thing that changed on a day, in finished sentences. */
export interface PastChange {
  /** YYYY-MM-DD */
  readonly date: string;
  /** Of the page that it is about, below the site's folder. */
  readonly address: string;
  readonly title: string;
  readonly sentences: readonly string[];
}

export interface PublishedState {
  /** Paths of the figures that `states` of a colour has where they are known. */
  readonly figures: readonly string[];
  readonly colours: readonly PublishedColour[];
  /** undefined in a manifest that did not list them. */
  readonly answers: readonly PublishedAnswer[] | undefined;
  readonly former: readonly FormerColour[];
  /** What changed before, newest first. */
  readonly past: readonly PastChange[];
  /** Every file of the site, below its folder. */
  readonly files: readonly string[];
}

type Fields = Readonly<Record<string, unknown>>;

/** What a manifest says, parsed from its JSON; what an older one left out is empty, or undefined where that would read as none. */
export function publishedState(manifest: unknown): PublishedState {
  const { figures, sheets, answers, former, changes, files } = fields(manifest);
  return {
    figures: Array.isArray(figures) ? texts(figures) : FIRST_FIGURES,
    colours: list(sheets).map((sheet) => colour(fields(sheet))),
    answers: Array.isArray(answers) ? answers.map((one) => answer(fields(one))) : undefined,
    former: list(former).map((one) => {
      const { slug, replacedBy } = fields(one);
      return { slug: text(slug), replacedBy: text(replacedBy) };
    }),
    past: list(changes).flatMap((one) => pastChange(fields(one))),
    files: texts(files),
  };
}

/** Those of manifests that did not list them. */
const FIRST_FIGURES: readonly string[] = [
  "notations.masstone.munsell.text",
  "permanence.category",
  "permanence.expectation",
  "optics.opacityClass",
  "optics.tintingStrength",
  "drying.class",
  "drying.touchDryDays",
  "oil.oilIndexClass",
  "oil.oilIndexGPer100g",
  "oil.finish",
];

function colour({
  slug,
  name,
  revision,
  states,
  said,
  photographs,
  sizes,
  prices,
  cautions,
  discontinued,
}: Fields): PublishedColour {
  const { signalWord, ...lists } = fields(cautions);
  return {
    slug: text(slug),
    name: text(name),
    revision: text(revision),
    states: Object.fromEntries(
      Object.entries(fields(states)).filter(
        (state): state is [string, string] => typeof state[1] === "string",
      ),
    ),
    said: saidTexts(said),
    photographs: Array.isArray(photographs) ? texts(photographs) : undefined,
    sizes: Array.isArray(sizes) ? texts(sizes) : undefined,
    prices: publishedPrices(prices),
    cautions: {
      signalWord: typeof signalWord === "string" ? signalWord : null,
      pictograms: texts(lists["pictograms"]),
      hazardStatements: texts(lists["hazardStatements"]),
      precautionaryStatements: texts(lists["precautionaryStatements"]),
      supplemental: texts(lists["supplemental"]),
      studio: texts(lists["studio"]),
    },
    discontinued: typeof discontinued === "string" ? discontinued : undefined,
  };
}

function publishedPrices(value: unknown): PublishedPrices | undefined {
  const { currency, sizes } = fields(value);
  if (typeof currency !== "string") return undefined;
  return {
    currency,
    sizes: list(sizes).flatMap((one) => {
      const { ml, price } = fields(one);
      return typeof ml === "number" && typeof price === "number" ? [{ ml, price }] : [];
    }),
  };
}

function answer({ slug, question, revision, said }: Fields): PublishedAnswer {
  return {
    slug: text(slug),
    question: text(question),
    revision: text(revision),
    said: saidTexts(said),
  };
}

function saidTexts(value: unknown): SaidTexts {
  if (value === undefined) return undefined;
  const found = fields(value);
  return Object.fromEntries(
    SAID.flatMap((key) => {
      const own = found[key];
      return typeof own === "string" ? [[key, own] as const] : [];
    }),
  );
}

function pastChange({ date, address, title, sentences }: Fields): PastChange[] {
  return typeof date === "string" && /^\d{4}-\d{2}-\d{2}$/.test(date)
    ? [{ date, address: text(address), title: text(title), sentences: texts(sentences) }]
    : [];
}

/** The fields of what was parsed from JSON; none of what is no object. */
export function fields(value: unknown): Fields {
  return typeof value === "object" && value !== null ? (value as Fields) : {};
}

function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function texts(value: unknown): string[] {
  return list(value).filter((one) => typeof one === "string");
}

function text(value: unknown): string {
  return typeof value === "string" ? value : "";
}
