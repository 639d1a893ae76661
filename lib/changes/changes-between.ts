import {
  SAID,
  type PublishedAnswer,
  type PublishedCautions,
  type PublishedColour,
  type PublishedState,
  type Said,
  type SaidTexts,
} from "./published-state.ts";
import { slugOrder } from "../quantities/name-order.ts";
import { given } from "../quantities/given.ts";

/** Lists of a sheet's cautions. */
export type CautionList = Exclude<keyof PublishedCautions, "signalWord">;
const CAUTION_LISTS: readonly CautionList[] = [
  "pictograms",
  "hazardStatements",
  "precautionaryStatements",
  "supplemental",
  "studio",
];

/** One difference that a customer would see. */
export type Change =
  | { readonly kind: "new" | "otherwise" }
  | {
      readonly kind: "gone";
      /** The name of what took its place. */
      readonly replacedBy?: string;
    }
  | { readonly kind: "discontinued"; readonly date: string }
  | { readonly kind: "renamed"; readonly before: string; readonly now: string }
  | {
      readonly kind: "figure";
      /** Path in the sheet. */
      readonly figure: string;
      readonly before: string | undefined;
      readonly now: string | undefined;
    }
  | {
      readonly kind: "said";
      readonly what: Said;
      readonly before: string | undefined;
      readonly now: string | undefined;
    }
  | {
      readonly kind: "price";
      readonly ml: number;
      readonly currency: string;
      /** Undefined where the size came, or went. */
      readonly before: number | undefined;
      readonly now: number | undefined;
    }
  | {
      readonly kind: "sizes" | "photographs";
      readonly came: readonly string[];
      readonly went: readonly string[];
    }
  | { readonly kind: "signal word"; readonly before: string | null; readonly now: string | null }
  | {
      readonly kind: "cautions";
      readonly of: CautionList;
      readonly came: readonly string[];
      readonly went: readonly string[];
    };

/** A colour or an answer that reads otherwise than it did, came or went. */
export interface ChangedThing {
  readonly what: "colour" | "answer";
  readonly slug: string;
  /** A colour's name, an answer's question. */
  readonly name: string;
  readonly changes: readonly Change[];
}

/** Everything that a customer would see differ between two states of a site: colours first, each in order of slug. */
export function changesBetween(before: PublishedState, now: PublishedState): ChangedThing[] {
  const figures = before.figures.filter((figure) => now.figures.includes(figure));
  return [
    ...changedThings(
      "colour",
      underNewSlugs(before.colours, now),
      now.colours,
      ({ name }) => name,
      (old, own) => colourChanges(old, own, figures),
    ).map((thing) => withReplacement(thing, now)),
    ...(before.answers === undefined || now.answers === undefined
      ? []
      : changedThings(
          "answer",
          before.answers,
          now.answers,
          ({ question }) => question,
          answerChanges,
        )),
  ];
}

/** What stood before, a colour that has another slug since under that: one that came as another went, and which `former` names in its place. */
function underNewSlugs(
  before: readonly PublishedColour[],
  { colours, former }: PublishedState,
): readonly PublishedColour[] {
  const [earlier, later] = [before, colours].map((all) => new Set(all.map(({ slug }) => slug)));
  return before.map((colour) => {
    const own = former.find(({ slug }) => slug === colour.slug)?.replacedBy;
    const isRenamed =
      own !== undefined && !later?.has(colour.slug) && later?.has(own) && !earlier?.has(own);
    return isRenamed === true ? { ...colour, slug: own } : colour;
  });
}

function withReplacement(thing: ChangedThing, { colours, former }: PublishedState): ChangedThing {
  const own = former.find(({ slug }) => slug === thing.slug)?.replacedBy;
  const replacedBy = colours.find(({ slug }) => slug === own)?.name;
  if (replacedBy === undefined) return thing;
  return {
    ...thing,
    changes: thing.changes.map((change) =>
      change.kind === "gone" ? { ...change, replacedBy } : change,
    ),
  };
}

function changedThings<T extends { readonly slug: string }>(
  what: ChangedThing["what"],
  before: readonly T[],
  now: readonly T[],
  nameOf: (one: T) => string,
  changesOf: (before: T, now: T) => Change[],
): ChangedThing[] {
  const earlier = new Map(before.map((one) => [one.slug, one]));
  const later = new Map(now.map((one) => [one.slug, one]));
  return [...new Set([...earlier.keys(), ...later.keys()])].sort(slugOrder).flatMap((slug) => {
    const [old, own] = [earlier.get(slug), later.get(slug)];
    const shown = own ?? old;
    if (shown === undefined) return [];
    const changes: Change[] =
      old === undefined
        ? [{ kind: "new" }]
        : own === undefined
          ? [{ kind: "gone" }]
          : changesOf(old, own);
    return changes.length === 0 ? [] : [{ what, slug, name: nameOf(shown), changes }];
  });
}

function answerChanges(before: PublishedAnswer, now: PublishedAnswer): Change[] {
  const told: Change[] = given([
    before.question !== now.question &&
      ({ kind: "renamed", before: before.question, now: now.question } as const),
    ...saidChanges(before.said, now.said),
  ]);
  return told.length > 0 || before.revision === now.revision ? told : [{ kind: "otherwise" }];
}

/** @param figures paths that both states list */
function colourChanges(
  before: PublishedColour,
  now: PublishedColour,
  figures: readonly string[],
): Change[] {
  const ofFigures = figureChanges(before.states, now.states, figures);
  // Its word says again what a category says.
  const isTold = ofFigures.some(({ figure }) => figure.startsWith("permanence."));
  const told: Change[] = given([
    before.name !== now.name && ({ kind: "renamed", before: before.name, now: now.name } as const),
    ...(now.discontinued === undefined || before.discontinued === now.discontinued
      ? []
      : [{ kind: "discontinued", date: now.discontinued } as const]),
    ...saidChanges(before.said, now.said).filter(
      ({ what }) => !(isTold && what === "lightfastness"),
    ),
    ...ofFigures,
    ...sizeChanges(before, now),
    ...listChanges("photographs", before.photographs, now.photographs),
    ...cautionChanges(before.cautions, now.cautions),
  ]);
  return told.length > 0 || before.revision === now.revision ? told : [{ kind: "otherwise" }];
}

function figureChanges(
  before: PublishedColour["states"],
  now: PublishedColour["states"],
  figures: readonly string[],
): Extract<Change, { readonly kind: "figure" }>[] {
  return figures
    .filter((figure) => before[figure] !== now[figure])
    .map((figure) => ({ kind: "figure", figure, before: before[figure], now: now[figure] }));
}

function saidChanges(
  before: SaidTexts,
  now: SaidTexts,
): Extract<Change, { readonly kind: "said" }>[] {
  if (before === undefined || now === undefined) return [];
  return SAID.filter((what) => before[what] !== now[what]).map((what) => ({
    kind: "said",
    what,
    before: before[what],
    now: now[what],
  }));
}

/** Each size that came, went or has another price since; of sizes without a price, those that came and went. */
function sizeChanges(before: PublishedColour, now: PublishedColour): Change[] {
  const prices = priceChanges(before.prices, now.prices);
  const isPriced = (text: string): boolean =>
    prices.some(({ ml }) => text.replaceAll("\u00a0", " ").startsWith(`${ml} ml `));
  // That it is discontinued stands in the place of its sizes, and is told by itself.
  const [old, own] = [before, now].map(
    ({ sizes, discontinued }) =>
      sizes && (discontinued === undefined ? sizes.filter((text) => !isPriced(text)) : []),
  );
  return [
    ...prices,
    ...listChanges("sizes", old, own).flatMap((change) => (isRewritten(change) ? [] : [change])),
  ];
}

function priceChanges(
  before: PublishedColour["prices"],
  now: PublishedColour["prices"],
): Extract<Change, { readonly kind: "price" }>[] {
  if (before === undefined || before.currency !== now?.currency) return [];
  const { currency } = now;
  const sizes = new Set([...now.sizes, ...before.sizes].map(({ ml }) => ml));
  return [...sizes].flatMap((ml) => {
    const [old, own] = [before, now].map(
      (prices) => prices.sizes.find((size) => size.ml === ml)?.price,
    );
    return old === own ? [] : [{ kind: "price", ml, currency, before: old, now: own }];
  });
}

/** Whether sizes and prices are as they were and only their decimal sign is another, as of a manifest of before. */
function isRewritten(change: Change): boolean {
  if (change.kind !== "sizes") return false;
  const [came, went] = [change.came, change.went].map((texts) =>
    texts.map((text) => text.replace(/[.,\s\u00a0\u202f]/g, "")).join(";"),
  );
  return came === went;
}

function listChanges(
  kind: "sizes" | "photographs",
  before: readonly string[] | undefined,
  now: readonly string[] | undefined,
): Change[] {
  if (before === undefined || now === undefined) return [];
  const { came, went } = membersChanged(before, now);
  return came.length + went.length === 0 ? [] : [{ kind, came, went }];
}

function cautionChanges(before: PublishedCautions, now: PublishedCautions): Change[] {
  return given([
    before.signalWord !== now.signalWord &&
      ({ kind: "signal word", before: before.signalWord, now: now.signalWord } as const),
    ...CAUTION_LISTS.flatMap((of): Change[] => {
      const { came, went } = membersChanged(before[of], now[of]);
      return came.length + went.length === 0 ? [] : [{ kind: "cautions", of, came, went }];
    }),
  ]);
}

function membersChanged(
  before: readonly string[],
  now: readonly string[],
): { readonly came: readonly string[]; readonly went: readonly string[] } {
  return {
    came: now.filter((one) => !before.includes(one)),
    went: before.filter((one) => !now.includes(one)),
  };
}

/** Colours that a site no longer has. */
export function removedColours(changed: readonly ChangedThing[]): ChangedThing[] {
  return changed.filter(
    ({ what, changes }) => what === "colour" && changes.some(({ kind }) => kind === "gone"),
  );
}
