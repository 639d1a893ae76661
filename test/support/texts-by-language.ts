/** A text of a page, and the language that its element or one around it says. */
export interface TextInLanguage {
  readonly language: string;
  readonly text: string;
}

const VOID = new Set([
  "area",
  "base",
  "br",
  "col",
  "hr",
  "img",
  "input",
  "link",
  "meta",
  "source",
  "wbr",
]);
const UNREAD = new Set(["script", "style", "code", "pre"]);
const TAG =
  /<(\/?)([a-zA-Z][\w:-]*)((?:[^<>"']|"[^"]*"|'[^']*')*?)(\/?)>|<!--[\s\S]*?-->|<![^>]*>/g;

/** What a reader is told on a page, element by element, in the order of the page. */
export function textsByLanguage(page: string): TextInLanguage[] {
  const told: TextInLanguage[] = [];
  const open: { readonly name: string; readonly language: string; readonly isRead: boolean }[] = [];
  const around = () => open.at(-1) ?? { name: "", language: "", isRead: true };
  let end = 0;
  for (const tag of page.matchAll(TAG)) {
    const text = page
      .slice(end, tag.index)
      .replace(/[ \t\r\n]+/g, " ")
      .trim();
    end = tag.index + tag[0].length;
    if (text !== "" && around().isRead) told.push({ language: around().language, text });
    const [, closing = "", name = "", attributes = "", selfClosing = ""] = tag;
    if (name === "" || VOID.has(name) || selfClosing !== "") continue;
    if (closing === "/") {
      const last = open.findLastIndex((one) => one.name === name);
      if (last >= 0) open.length = last;
    } else
      open.push({
        name,
        language: /\blang="([^"]*)"/.exec(attributes)?.[1] ?? around().language,
        isRead: around().isRead && !UNREAD.has(name),
      });
  }
  return told;
}
