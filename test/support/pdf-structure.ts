import { getDocument, VerbosityLevel } from "./pdf-reader.ts";

/** One element of the structure tree, as an independent reader finds it, with the text marked as its own. */
export interface FoundElement {
  readonly role: string;
  readonly alt?: string;
  readonly language?: string;
  readonly text: string;
  /** From 0. */
  readonly page: number;
}

export interface FoundBookmark {
  readonly title: string;
  readonly page: number | undefined;
  readonly depth: number;
}

interface StructNode {
  readonly role?: string;
  readonly alt?: string;
  readonly lang?: string;
  readonly id?: string;
  readonly children?: readonly StructNode[];
}
interface OutlineNode {
  readonly title: string;
  readonly dest: unknown;
  readonly items: readonly OutlineNode[];
}
interface MarkedItem {
  readonly type?: string;
  readonly id?: string;
  readonly tag?: string;
  readonly str?: string;
}

/** Elements in reading order, page by page, and bookmarks with the pages that they lead to. */
export async function pdfStructure(bytes: Uint8Array): Promise<{
  readonly elements: readonly FoundElement[];
  readonly bookmarks: readonly FoundBookmark[];
  readonly links: readonly string[];
}> {
  const document = await getDocument({
    data: Uint8Array.from(bytes),
    verbosity: VerbosityLevel.ERRORS,
    useSystemFonts: false,
  }).promise;
  const elements: FoundElement[] = [];
  const links: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const texts = markedTexts(items);
    const tree = (await page.getStructTree()) as unknown as StructNode | null;
    if (tree !== null) visit(tree, number - 1);
    for (const { url } of (await page.getAnnotations()) as { url?: string }[])
      if (url !== undefined) links.push(url);

    function visit(node: StructNode, at: number): string {
      const own = elements.length;
      if (node.id !== undefined) return texts.get(node.id) ?? "";
      if (node.role !== undefined && node.role !== "Root")
        elements.push({ role: node.role, text: "", page: at });
      const text = (node.children ?? []).map((child) => visit(child, at)).join("");
      if (node.role !== undefined && node.role !== "Root") {
        elements[own] = {
          role: node.role,
          text,
          page: at,
          ...(node.alt === undefined ? {} : { alt: node.alt }),
          ...(node.lang === undefined ? {} : { language: node.lang }),
        };
      }
      return text;
    }
  }
  const bookmarks: FoundBookmark[] = [];
  const walk = async (nodes: readonly OutlineNode[], depth: number): Promise<void> => {
    for (const { title, dest, items } of nodes) {
      bookmarks.push({
        title,
        depth,
        page: Array.isArray(dest)
          ? await document.getPageIndex(dest[0] as { num: number; gen: number })
          : undefined,
      });
      await walk(items, depth + 1);
    }
  };
  const outline: unknown = await document.getOutline();
  if (Array.isArray(outline)) await walk(outline as readonly OutlineNode[], 0);
  await document.loadingTask.destroy();
  return { elements, bookmarks, links };
}

function markedTexts(items: readonly MarkedItem[]): Map<string, string> {
  const texts = new Map<string, string>();
  const open: (string | undefined)[] = [];
  for (const { type, id, str } of items) {
    if (type === "beginMarkedContentProps" || type === "beginMarkedContent")
      open.push(id ?? undefined);
    else if (type === "endMarkedContent") open.pop();
    else {
      const inside = open.findLast((one) => one !== undefined);
      if (inside !== undefined && str !== undefined)
        texts.set(inside, (texts.get(inside) ?? "") + str);
    }
  }
  return texts;
}
