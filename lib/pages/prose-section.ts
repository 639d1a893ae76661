import type { Block, SectionBlock } from "../blocks/block.ts";
import { markdownHtml } from "./markdown.ts";

/** A section of running text in Markdown, and what stands below it. */
export function proseSection(
  [id, heading, prose]: readonly [id: string, heading: string, prose: string],
  below: readonly Block[] = [],
): SectionBlock {
  const text: Block = { kind: "prose", body: markdownHtml(prose) };
  return { kind: "section", id, heading, blocks: [text, ...below] };
}
