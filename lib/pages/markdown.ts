import MarkdownIt from "markdown-it";

/** Raw HTML is shown as text, and a link leads only where a reader may be sent. */
export function houseMarkdown() {
  const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
  markdown.validateLink = (url) =>
    /^(https?:|mailto:|[^:]*$)/i.test(url.trim()) && !url.trim().startsWith("//");
  markdown.disable("image");
  return markdown;
}

export type Markdown = ReturnType<typeof houseMarkdown>;

const markdown = houseMarkdown();

/** A record's Markdown as HTML that is safe to print. */
export function markdownHtml(text: string): string {
  return markdown.render(text);
}
