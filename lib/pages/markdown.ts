import MarkdownIt from "markdown-it";
import { at } from "../quantities/at.ts";
import { asMarkup, type Markup } from "../present/views.ts";

/** Raw HTML is shown as text, and a link leads only where a reader may be sent. */
export function houseMarkdown() {
  const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
  markdown.validateLink = (url) =>
    /^(https?:|mailto:|[^:]*$)/i.test(url.trim()) && !url.trim().startsWith("//");
  markdown.disable("image");
  for (const kind of ["th_open", "td_open"])
    markdown.renderer.rules[kind] = (tokens, i, options, _, renderer) => {
      const token = at(tokens, i);
      // A column's side is a class: a page may hold no style of its own.
      token.attrs = token.attrGet("style") === "text-align:right" ? [["class", "number"]] : null;
      return renderer.renderToken(tokens, i, options);
    };
  return markdown;
}

export type Markdown = ReturnType<typeof houseMarkdown>;

const markdown = houseMarkdown();

/** A record's Markdown as HTML that is safe to print. */
export function markdownHtml(text: string): Markup {
  return asMarkup(markdown.render(text));
}
