import type { SectionView } from "../present/views.ts";
import type { Block, GroupBlock, SectionBlock, StatementBlock } from "./block.ts";

/** A section, unless it has nothing to say. */
export function section(id: string, heading: string, blocks: readonly Block[]): SectionBlock[] {
  return blocks.length === 0 ? [] : [{ kind: "section", id, heading, blocks }];
}

export function statement(
  text: string,
  role: StatementBlock["role"] = "body",
  more: Partial<Pick<StatementBlock, "standing" | "link">> = {},
): StatementBlock {
  return { kind: "statement", role, text, ...more };
}

/** What sections share, in reading order: finding, figures, plots, tables, lists, terms. */
export function blocksOf({
  summary,
  properties,
  pictures,
  tables,
  lists,
  terms,
}: Omit<SectionView, "id" | "heading">): Block[] {
  return [
    ...summary.map((text, i) => statement(text, i === 0 ? "lead" : "body")),
    ...(properties === undefined || properties.rows.length === 0
      ? []
      : [{ kind: "figures", table: properties } as const]),
    ...(pictures.length === 0 ? [] : [{ kind: "plots", plots: pictures } as const]),
    ...tables.map((table) => ({ kind: "table", table }) as const),
    ...columns(lists.map((list) => ({ kind: "list", list }) as const)),
    ...(terms.length === 0 ? [] : [{ kind: "terms", terms } as const]),
  ];
}

/** Blocks below a heading inside a section. */
export function headed(heading: string, blocks: readonly Block[], id?: string): GroupBlock {
  return {
    kind: "group",
    ...(id === undefined ? {} : { id }),
    flow: "stack",
    blocks: [{ kind: "heading", level: 3, text: heading }, ...blocks],
  };
}

/** Blocks side by side; none for none. */
export function columns(blocks: readonly Block[]): GroupBlock[] {
  return blocks.length === 0 ? [] : [{ kind: "group", flow: "columns", blocks }];
}
