import { tableView, type WrittenTable } from "../present/table-view.ts";
import type { LinkView, ListView, PictureView, PropertyTableView } from "../present/views.ts";
import type {
  Block,
  FoldBlock,
  GroupBlock,
  LinesBlock,
  LineView,
  LinksBlock,
  ListBlock,
  PlotsBlock,
  SectionBlock,
  StatementBlock,
  TableBlock,
} from "./block.ts";

/** A section, unless it has nothing to say. */
export function section(id: string, heading: string, blocks: readonly Block[]): SectionBlock[] {
  return blocks.length === 0 ? [] : [{ kind: "section", id, heading, blocks }];
}

/** Ways to the sections of a page. */
export function contentsOf(sections: readonly SectionBlock[]): LinkView[] {
  return sections.map(({ id, heading }) => ({ text: heading, href: `#${id}` }));
}

export function statement(
  text: string,
  role: StatementBlock["role"] = "body",
  more: Partial<Pick<StatementBlock, "standing" | "link" | "quote" | "code">> = {},
): StatementBlock {
  return { kind: "statement", role, text, ...more };
}

/** What many sections say, each part where there is one. */
export interface SectionParts {
  /** The finding first, one paragraph each. */
  readonly summary: readonly string[];
  readonly properties?: PropertyTableView;
  readonly pictures?: readonly PictureView[];
  readonly tables?: readonly WrittenTable[];
  readonly lists?: readonly ListView[];
}

/** The parts of a section in reading order: finding, figures, drawings, tables, lists. */
export function blocksOf({
  summary,
  properties,
  pictures = [],
  tables: shown = [],
  lists: listed = [],
}: SectionParts): Block[] {
  return [
    ...summary.map((text, i) => statement(text, i === 0 ? "lead" : "body")),
    ...(properties === undefined || properties.rows.length === 0
      ? []
      : [{ kind: "figures", table: properties } as const]),
    ...plots(pictures),
    ...tables(shown),
    ...columns(lists(listed)),
  ];
}

/** Drawings side by side; none for none. */
export function plots(pictures: readonly PictureView[]): PlotsBlock[] {
  return pictures.length === 0 ? [] : [{ kind: "plots", plots: pictures }];
}

/** A table of what a page writes. */
export function tableOf(table: WrittenTable): TableBlock {
  return { kind: "table", table: tableView(table) };
}

export function tables(shown: readonly WrittenTable[]): TableBlock[] {
  return shown.map(tableOf);
}

export function lists(shown: readonly ListView[]): ListBlock[] {
  return shown.map((list) => ({ kind: "list", list }));
}

/** Words with what is to be known of each; none for none. */
export function linesOf(lines: readonly LineView[]): LinesBlock[] {
  return lines.length === 0 ? [] : [{ kind: "lines", lines }];
}

/** Ways on, a link each; none for none. */
export function linksOf(links: readonly LinkView[]): LinksBlock[] {
  return links.length === 0 ? [] : [{ kind: "links", links }];
}

/** What a reader opens; nothing where nothing is in it. */
export function fold(summary: string, blocks: readonly Block[]): FoldBlock[] {
  return blocks.length === 0 ? [] : [{ kind: "fold", summary, blocks }];
}

/** Blocks below a heading inside a section. */
export function headed(heading: string, blocks: readonly Block[], id?: string): GroupBlock {
  return {
    kind: "group",
    ...(id !== undefined && { id }),
    flow: "stack",
    blocks: [{ kind: "heading", level: 3, text: heading }, ...blocks],
  };
}

/** Blocks side by side; none for none. */
export function columns(blocks: readonly Block[]): GroupBlock[] {
  return blocks.length === 0 ? [] : [{ kind: "group", flow: "columns", blocks }];
}
