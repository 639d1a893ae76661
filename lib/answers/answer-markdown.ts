import type { Token } from "markdown-it";
import { houseMarkdown, type Markdown } from "../pages/markdown.ts";
import { shortcodeEnd } from "./shortcode-syntax.ts";

/** A shortcode as found in a Markdown text. */
export interface FoundShortcode {
  readonly raw: string;
  /** From the start of the text, both from 0. */
  readonly line: number;
  readonly column: number;
  /** Alone in a paragraph at the top level: only there may it be a table or a picture. */
  readonly alone: boolean;
  /** At the start of a sentence: a name there has its capital. */
  readonly begins: boolean;
}

type MarkdownPart = { readonly html: string } | { readonly shortcode: FoundShortcode };

const markdown = houseMarkdown().use(withShortcodes);

/**
 * A Markdown text in its parts, in order: prose as HTML, and the shortcodes that stand
 * alone. What a shortcode in a sentence becomes is asked of `inline`, as HTML.
 */
export function markdownParts(
  text: string,
  inline: (found: FoundShortcode) => string,
): MarkdownPart[] {
  const tokens = markdown.parse(text, {});
  const lines = text.split("\n");
  const parts: MarkdownPart[] = [];
  let prose: Token[] = [];
  const endProse = (): void => {
    if (prose.length > 0)
      parts.push({ html: markdown.renderer.render(prose, markdown.options, {}) });
    prose = [];
  };
  let line = 0;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    line = token.map?.[0] ?? line;
    const lone =
      token.type === "inline" &&
      token.level === 1 &&
      tokens[i - 1]?.type === "paragraph_open" &&
      isShortcodesAlone(token);
    const found = token.type === "inline" ? located(token, line, lines, lone) : [];
    if (lone) {
      prose.pop();
      endProse();
      parts.push(...found.map(({ place }) => ({ shortcode: place })));
      i++;
    } else {
      for (const { token: shortcode, place } of found) shortcode.content = inline(place);
      prose.push(token);
    }
  }
  endProse();
  return parts;
}

/** The same for a text in one line: a summary. */
export function markdownLine(text: string, inline: (found: FoundShortcode) => string): string {
  const tokens = markdown.parseInline(text, {});
  for (const token of tokens) {
    for (const { token: shortcode, place } of located(token, 0, text.split("\n"), false))
      shortcode.content = inline(place);
  }
  return markdown.renderer.render(tokens, markdown.options, {});
}

function isShortcodesAlone({ children }: Token): boolean {
  return (
    children !== null &&
    children.every(
      ({ type, content }) =>
        type === "shortcode" || type === "softbreak" || (type === "text" && content.trim() === ""),
    )
  );
}

interface Located {
  readonly token: Token;
  readonly place: FoundShortcode;
}

/** Every shortcode of an inline token with its line and column; those in a link's text among them. */
function located(
  { children, content }: Token,
  firstLine: number,
  lines: readonly string[],
  alone: boolean,
): Located[] {
  const taken = new Map<number, number>();
  return (children ?? [])
    .filter(({ type }) => type === "shortcode")
    .map((token) => {
      const { raw, offset } = token.meta as { raw: string; offset: number };
      const line = firstLine + content.slice(0, offset).split("\n").length - 1;
      const column = Math.max(
        0,
        (lines[line] ?? "").indexOf(raw.split("\n")[0] ?? raw, taken.get(line) ?? 0),
      );
      taken.set(line, column + 1);
      return {
        token,
        place: {
          raw,
          line,
          column,
          alone,
          begins: /(?:^|[.!?][*_)"]*\s+)[*_("]*$/.test(content.slice(0, offset)),
        },
      };
    });
}

/** No name of a shortcode is longer. */
const LONGEST_NAME = 40;

/** Where the mark and the name of a shortcode without its close end: what follows is prose. */
function openedEnd(text: string, start: number): number {
  const opened = text.slice(start, start + LONGEST_NAME);
  return start + (/^\{%(?:[ \t]*[a-z][\w-]*)?/.exec(opened)?.[0].length ?? 0);
}

/** `{% ... %}` as a token of its own, which Markdown leaves alone; an open one without its close is a token too, for the complaint. */
function withShortcodes(md: Markdown): void {
  md.inline.ruler.before("escape", "shortcode", (state, silent) => {
    if (!state.src.startsWith("{%", state.pos)) return false;
    const found = shortcodeEnd(state.src, state.pos);
    const end = found < 0 ? openedEnd(state.src, state.pos) : found;
    if (!silent)
      state.push("shortcode", "", 0).meta = {
        raw: state.src.slice(state.pos, end),
        offset: state.pos,
      };
    state.pos = end;
    return true;
  });
  md.renderer.rules["shortcode"] = (tokens, i) => tokens[i]?.content ?? "";
}
