/** How the sheets of a range are bound: in one file, of a large range in several. */
import { pagesOf, type GroupPart, type ListGroup } from "../pages/range-parts.ts";

/** Sheets of one file: more would be slow to open, and to draw. Our own choice. */
const SHEETS_OF_A_FILE = 150;

export interface RangePart<G> {
  /** "range.pdf"; of several "range-1.pdf". */
  readonly path: string;
  readonly families: readonly G[];
}

export function rangeParts<G extends ListGroup<unknown>>(
  families: readonly G[],
): RangePart<GroupPart<G>>[] {
  const parts = pagesOf<unknown, G>(families, SHEETS_OF_A_FILE).filter((part) => part.length > 0);
  return parts.map((part, i) => ({
    path: parts.length === 1 ? "range.pdf" : `range-${i + 1}.pdf`,
    families: part,
  }));
}
