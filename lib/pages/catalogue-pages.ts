import type { Words } from "../words/words.ts";
import { unitText } from "../present/figure-text.ts";
import type {
  LinkView,
  PageView,
  ColourCardView,
  DownloadView,
  PictureView,
  TableView,
} from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { tableView, type Cell, type WrittenTable } from "../present/table-view.ts";
import type { Language } from "../quantities/languages.ts";
import { FAMILIES } from "../records/schema/terms.ts";
import { colourCard } from "./colour-card.ts";
import type { OrderKeys, ColourRow } from "./colour-row.ts";
import { rowOf } from "./colour-rows.ts";
import { filterChoices } from "./range-filters.ts";
import { orderPictures } from "./catalogue-pictures.ts";
import { oilGroups } from "./oil-order-page.ts";
import { strengthGroups } from "./strength-order-page.ts";
import { addressTo, type PageContext, type PagePlace } from "./page-context.ts";
import { ON_ONE_PAGE, pagesOf, partHeading, partLinks, partPaths } from "./range-parts.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { remembered } from "../quantities/remembered.ts";
import { pageHead } from "./site-frame.ts";
import { nameOrder } from "../quantities/name-order.ts";
import { grouped } from "../quantities/grouped.ts";
import type { PageKind } from "./page-kind.ts";

export interface CatalogueGridView extends PageView {
  readonly kind: "catalogue-grid";
  readonly lead: readonly string[];
  readonly compare: LinkView;
  /** Worked by assets/scripts/range.ts, hidden without it. */
  readonly filters: {
    readonly label: string;
    readonly families: string;
    readonly heading: string;
    readonly choices: readonly { readonly tag: string; readonly text: string }[];
    readonly found: string;
    readonly nothing: string;
  };
  /** This grid and the tables, the current one marked. */
  readonly orders: readonly LinkView[];
  /** Of a range on several pages: these, and where each family begins. */
  readonly parts: readonly LinkView[];
  readonly contents: readonly LinkView[];
  readonly families: readonly {
    readonly id: string;
    readonly heading: string;
    readonly count: string;
    readonly colours: readonly ColourCardView[];
  }[];
  readonly downloads: readonly DownloadView[];
}

export interface CatalogueTableView extends PageView {
  readonly kind: "catalogue-table";
  readonly lead: readonly string[];
  readonly orders: readonly LinkView[];
  /** Of a range on several pages. */
  readonly parts: readonly LinkView[];
  /** The range in this order, drawn. */
  readonly pictures?: readonly PictureView[];
  /** Ways to the groups, where there are several. */
  readonly contents: readonly LinkView[];
  /** One group without heading, or one for each family or class. */
  readonly groups: readonly {
    readonly id: string;
    readonly heading?: string;
    readonly table: TableView;
  }[];
  readonly downloads: readonly DownloadView[];
}

/** The printed orders of the catalogue, each a page of its own. */
export const ORDERS = [
  "family",
  "value",
  "hue",
  "drying",
  "permanence",
  "oil",
  "strength",
] as const;
export type Order = (typeof ORDERS)[number];

export function orderPath(order: Order | "grid"): string {
  return order === "grid" ? "colours/index.html" : `colours/by-${order}/index.html`;
}

/** Where each page of an order lies: several of a large range. */
export function orderPaths(order: Order | "grid", context: PageContext): string[] {
  return order === "grid"
    ? partPaths(orderPath(order), gridPages(context), "colours/by-page/")
    : partPaths(orderPath(order), orderPages(context, order));
}

/** The catalogue's orders, and the page of near-neutrals where the range has any. */
export function orderLinks(context: PageContext, place: PagePlace, shown: string): LinkView[] {
  const { words, sheets } = context;
  const orders = (["grid", ...ORDERS] as const).map((order) => ({
    text: words.pages.catalogue.orders[order],
    to: orderPath(order),
  }));
  const whites = sheets.some((worded) => rowOf(worded, context).isNearNeutral)
    ? [{ text: words.pages.catalogue.orders.whites, to: WHITES_PATH }]
    : [];
  return [...orders, ...whites].map(({ text, to }) => ({
    text,
    href: addressTo(to, place),
    ...(to === shown && { current: true }),
  }));
}

/** All near-neutrals, white by white. */
export const WHITES_PATH = "colours/in-the-whites/index.html";

/** @param nth page of it, from 0. */
export function catalogueGrid(
  nth: number,
  context: PageContext,
  place: PagePlace,
): CatalogueGridView {
  const { words } = context;
  const text = words.pages.catalogue;
  const pages = gridPages(context);
  const paths = orderPaths("grid", context);
  const isWhole = pages.length < 2;
  const { families } = text.filters;
  return {
    kind: "catalogue-grid",
    ...pageHead(
      context,
      place,
      partHeading(text.heading, nth + 1, pages.length, words),
      text.gridLead,
    ),
    lead: [text.gridLead],
    compare: { text: words.pages.compare.fromCatalogue, href: `${place.root}compare/` },
    filters: {
      ...text.filters,
      ...(!isWhole && { label: words.pages.parts.onThisPage(text.filters.label) }),
      families,
      choices: filterChoices(
        words,
        (pages[nth] ?? []).flatMap(({ items }) =>
          items.map((worded) => rowOf(worded, context).filters),
        ),
      ),
    },
    orders: orderLinks(context, place, orderPath("grid")),
    parts: partLinks(paths, place),
    contents: isWhole
      ? []
      : familyLinks(context, place).map(({ family, href }) => ({
          text: words.families[family],
          href,
        })),
    families: (pages[nth] ?? []).map(({ family, items, all: count }) => ({
      id: family,
      heading: words.families[family],
      count: text.count(count),
      colours: items.map((worded) => ({
        ...colourCard(worded, context, place),
        tags: rowOf(worded, context).filters.tags.join(" "),
      })),
    })),
    downloads: [
      {
        text: "catalogue.csv",
        href: `${place.root}catalogue.csv`,
        note: context.words.pages.downloads.csv,
      },
      {
        text: "figures.csv",
        href: `${place.root}figures.csv`,
        note: context.words.pages.downloads.figures,
      },
      { text: "cards", href: `${place.root}cards/`, note: context.words.pages.cards.page.link },
      {
        text: "catalogue.json",
        href: `${place.root}catalogue.json`,
        note: context.words.pages.downloads.json,
      },
    ],
  };
}

type FamilyKey = keyof Words["families"];

/** In the order of their list; what has no family comes last. */
export const FAMILY_KEYS: readonly FamilyKey[] = [...FAMILIES, "other"];

/** In the order of the family list, and in each by name. */
export function byFamily(
  sheets: readonly SheetTexts[],
  language: Language,
): (readonly [FamilyKey, readonly SheetTexts[]])[] {
  const named = byName(sheets, language);
  return FAMILY_KEYS.map(
    (family) =>
      [family, named.filter(({ sheet }) => (sheet.family ?? "other") === family)] as const,
  ).filter(([, members]) => members.length > 0);
}

function byName(sheets: readonly SheetTexts[], language: Language): SheetTexts[] {
  const inOrder = nameOrder(language);
  return sheets.toSorted((one, other) => inOrder(one.sheet.name, other.sheet.name));
}

const gridPages = remembered(({ sheets, words }: PageContext) =>
  pagesOf(
    byFamily(sheets, words.language).map(([family, items]) => ({
      family,
      items,
      all: items.length,
    })),
    ON_ONE_PAGE.colours,
  ),
);

interface Group {
  readonly id: string;
  readonly heading: string;
  readonly items: readonly SheetTexts[];
}

/** Colours of one heading in an order, and what the table that shows some of them says. */
export interface OrderGroup extends Group {
  /** Heads, that of the colours first. */
  readonly columns: WrittenTable["columns"];
  /** What stands behind a colour. @param nth its place in the group, from 1. */
  readonly cells: (row: ColourRow, nth: number) => readonly Cell[];
  readonly isCompact: boolean;
}

const orderPages = remembered((context: PageContext, order: Order) =>
  pagesOf(orderGroups(order, context), ON_ONE_PAGE.colours),
);

/** @param nth page of it, from 0. */
export function catalogueTable(
  order: Order,
  nth: number,
  context: PageContext,
  place: PagePlace,
): CatalogueTableView {
  const { words } = context;
  const text = words.pages.catalogue;
  const pages = orderPages(context, order);
  const paths = orderPaths(order, context);
  const groups = pages[nth] ?? [];
  const headed = [...new Set(pages.flat().map(({ id }) => id))].map((id) => {
    const first = pages.findIndex((page) => page.some((group) => group.id === id));
    const heading = pages[first]?.find((group) => group.id === id)?.heading ?? "";
    const href = first === nth ? "" : addressTo(paths[first] ?? "", place);
    return { text: heading, href: `${href}#${id}` };
  });
  const heading = `${text.heading}, ${words.lowerFirst(text.orders[order]).replace("table ", "")}`;
  return {
    kind: "catalogue-table",
    ...pageHead(
      context,
      place,
      partHeading(heading, nth + 1, pages.length, words),
      text.leads[order],
    ),
    lead: [text.leads[order]],
    orders: orderLinks(context, place, orderPath(order)),
    parts: partLinks(paths, place),
    pictures: orderPictures(
      order,
      groups.flatMap(({ items }) => items),
      context,
      place,
    ),
    contents: headed.length > 2 ? headed : [],
    groups: groups.map(({ id, heading: group, items, from, columns, cells, isCompact }) => ({
      id,
      heading: group,
      table: tableView({
        caption: text.caption(group),
        compact: isCompact,
        columns,
        rows: items.map((worded, i) => {
          const { name, slug } = worded.sheet;
          const row = rowOf(worded, context);
          const link = { text: name, href: `${place.root}colours/${slug}/`, swatch: row.swatch };
          return [link, ...cells(row, from + i + 1)];
        }),
      }),
    })),
    downloads: [],
  };
}

function orderGroups(order: Order, context: PageContext): OrderGroup[] {
  switch (order) {
    case "oil":
      return oilGroups(context);
    case "strength":
      return strengthGroups(context);
    default: {
      const { words } = context;
      const { columns: text } = words.pages.catalogue;
      const columns = [
        text.colour,
        text.pigments,
        text.munsell,
        text.lightfastness,
        text.opacity,
        text.drying,
        { head: text.oil, unit: unitText("g/100 g", words), numeric: true },
      ];
      return orderedGroups(order, context).map((group) => ({
        ...group,
        columns,
        cells: (row) => row.cells,
        isCompact: false,
      }));
    }
  }
}

/** Where each family begins in the grid, on whatever page of it. */
export function familyLinks(
  context: PageContext,
  place: PagePlace,
): { readonly family: FamilyKey; readonly href: string }[] {
  const pages = gridPages(context);
  const paths = orderPaths("grid", context);
  return byFamily(context.sheets, context.words.language).map(([family]) => {
    const first = pages.findIndex((page) => page.some((group) => group.family === family));
    return { family, href: `${addressTo(paths[first] ?? "", place)}#${family}` };
  });
}

function orderedGroups(order: Exclude<Order, "oil" | "strength">, context: PageContext): Group[] {
  const { sheets, words } = context;
  const text = words.pages.catalogue;
  const by = (
    key: (keys: OrderKeys) => number | undefined,
    headingOf: (value: number, keys: OrderKeys) => string,
  ): Group[] => {
    const keyed = byName(sheets, words.language).map((worded) => {
      const { keys } = rowOf(worded, context);
      return { worded, value: key(keys), heading: (value: number) => headingOf(value, keys) };
    });
    return cutByHeading(keyed, text.groups.notStated);
  };
  switch (order) {
    case "family":
      return byFamily(sheets, words.language).map(([family, members]) => ({
        id: family,
        heading: words.families[family],
        items: members,
      }));
    case "value":
      return by(
        ({ value }) => value,
        (value) => text.value(Math.floor(value)),
      );
    case "hue":
      return by(
        ({ hue }) => hue,
        (hue) =>
          hue < 0
            ? text.groups.neutral
            : (HUE_FAMILIES[Math.min(9, Math.ceil(hue / 10) - 1)] ?? ""),
      );
    case "drying":
      return by(
        ({ dryingRank }) => dryingRank,
        (_, { drying }) => drying,
      );
    case "permanence":
      return by(
        ({ permanenceRank }) => permanenceRank,
        (_, { permanence }) => permanence,
      );
  }
}

/**
 * Sheets in order of a number, cut where the heading changes; those without one last.
 * @param keyed in the order of those that are alike.
 */
function cutByHeading(
  keyed: readonly {
    readonly worded: SheetTexts;
    readonly value: number | undefined;
    readonly heading: (value: number) => string;
  }[],
  without: string,
): Group[] {
  const known = keyed
    .flatMap(({ worded, value, heading }) =>
      value === undefined ? [] : [{ worded, value, heading: heading(value) }],
    )
    .sort((one, other) => one.value - other.value);
  const groups = [...grouped(known.map(({ heading, worded }) => [heading, worded]))].map(
    ([heading, members], i) => ({ id: `group-${i + 1}`, heading, items: members }),
  );
  const unknown = keyed.filter(({ value }) => value === undefined).map(({ worded }) => worded);
  return unknown.length === 0
    ? groups
    : [...groups, { id: "not-stated", heading: without, items: unknown }];
}

const HUE_FAMILIES = [
  "Reds (R)",
  "Yellow-reds (YR)",
  "Yellows (Y)",
  "Green-yellows (GY)",
  "Greens (G)",
  "Blue-greens (BG)",
  "Blues (B)",
  "Purple-blues (PB)",
  "Purples (P)",
  "Red-purples (RP)",
];

/** The swatches, and every order of theirs as a table: of a large range several pages each. */
export const CATALOGUE: PageKind<CatalogueGridView | CatalogueTableView> = {
  pages: ({ context }) => {
    const { grid, tables } = keptPaths(context);
    return [
      ...grid.map((path, nth) => ({
        path,
        view: (place: PagePlace) => catalogueGrid(nth, context, place),
      })),
      ...tables.map(({ path, order, nth }) => ({
        path,
        view: (place: PagePlace) => catalogueTable(order, nth, context, place),
      })),
    ];
  },
};

/** Asked of the colours again only where what it goes by changed. */
function keptPaths(context: PageContext) {
  const step = { modules: ["lib/pages/catalogue-pages.ts"], name: "places of the catalogue" };
  return madeStep(context.steps, step, () => ({
    grid: orderPaths("grid", context),
    tables: ORDERS.flatMap((order) =>
      orderPaths(order, context).map((path, nth) => ({ path, order, nth })),
    ),
  }));
}
