/**
 * The search in the head of every page. The way to the list that stands there without script becomes a field; what can
 * be found is fetched as a script, so that it works from a folder too, when the field is first entered.
 * "/" goes to the field, arrows go through what was found, Escape leaves it.
 */
import MiniSearch from "minisearch";
import type { SearchDocument } from "../../lib/blocks/search-document.ts";
import { searchedLetters, searchPartPath } from "../../lib/pages/search-parts.ts";

declare global {
  var searchDocuments: readonly SearchDocument[] | undefined;
  /** Of a large range, in place of the documents: the letters under which parts of them are filed. */
  var searchLetters: readonly string[] | undefined;
  var searchParts: Readonly<Record<string, readonly SearchDocument[]>> | undefined;
}

const MOST = 9;
const SVG = "http://www.w3.org/2000/svg";

for (const link of document.querySelectorAll<HTMLAnchorElement>("[data-site-search]")) search(link);

function search(link: HTMLAnchorElement): void {
  const root = link.dataset["root"] ?? "";
  const field = document.createElement("input");
  field.type = "search";
  field.className = link.className;
  field.placeholder = link.textContent.trim();
  field.setAttribute("aria-label", field.placeholder);
  field.setAttribute("aria-controls", "found");
  field.setAttribute("aria-keyshortcuts", "/");
  field.autocomplete = "off";
  field.spellcheck = false;
  const panel = document.createElement("div");
  panel.className = "found";
  panel.id = "found";
  panel.hidden = true;
  const status = document.createElement("p");
  status.className = "hidden";
  status.setAttribute("role", "status");
  link.parentElement?.append(panel, status);
  link.replaceWith(field);

  let index: SearchIndex | undefined;
  const close = (): void => {
    panel.hidden = true;
  };
  const show = (): void => {
    const words = field.value.trim();
    if (words === "" || index === undefined) {
      close();
      status.textContent = "";
      return;
    }
    if (fetchMissing(index, words, root, show)) return;
    const found = results(index, words);
    panel.replaceChildren(...found.map((one) => entry(one, root, link.dataset)));
    if (found.length === 0) panel.append(said(link.dataset["none"] ?? ""));
    panel.hidden = false;
    status.textContent =
      found.length === 0
        ? (link.dataset["none"] ?? "")
        : (link.dataset["count"] ?? "").replace("{count}", String(found.length));
  };

  field.addEventListener("focus", () => {
    void loaded(`${root}search-index.js`).then((isThere) => {
      if (isThere) index ??= newIndex();
      show();
    });
  });
  field.addEventListener("input", show);
  document.addEventListener("keydown", (event) => {
    const isTyping =
      event.target instanceof HTMLElement && event.target.matches("input, textarea, select");
    if (event.key === "/" && !isTyping && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      field.focus();
    }
    if (event.key === "Escape" && !panel.hidden) {
      close();
      field.focus();
    }
  });
  const walk = (event: KeyboardEvent): void => {
    const ways = [field, ...panel.querySelectorAll("a")];
    const at = ways.indexOf(document.activeElement as HTMLInputElement);
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step !== 0 && at >= 0 && !panel.hidden) {
      event.preventDefault();
      ways[(at + step + ways.length) % ways.length]?.focus();
    }
    if (event.key === "Enter" && at === 0) panel.querySelector("a")?.click();
  };
  field.addEventListener("keydown", walk);
  panel.addEventListener("keydown", walk);
  document.addEventListener("pointerdown", ({ target }) => {
    if (target instanceof Node && !panel.contains(target) && target !== field) close();
  });
  panel.parentElement?.addEventListener("focusout", ({ relatedTarget }) => {
    if (relatedTarget instanceof Node && !panel.parentElement?.contains(relatedTarget)) close();
  });
}

const loading = new Map<string, Promise<boolean>>();

/** A script beside the page, once; one that failed may be there the next time. */
function loaded(address: string): Promise<boolean> {
  const known = loading.get(address);
  if (known !== undefined) return known;
  const script = document.createElement("script");
  const one = new Promise<boolean>((resolve) => {
    script.src = address;
    script.addEventListener("load", () => resolve(true));
    script.addEventListener("error", () => {
      loading.delete(address);
      resolve(false);
    });
  });
  loading.set(address, one);
  document.head.append(script);
  return one;
}

interface SearchIndex {
  readonly engine: MiniSearch<SearchDocument>;
  /** Letters whose parts are in it, or were looked for. */
  readonly letters: Set<string>;
}

function newIndex(): SearchIndex {
  const engine = new MiniSearch<SearchDocument>({
    fields: ["title", "words"],
    storeFields: ["kind", "title", "text", "href", "colours"],
    searchOptions: {
      boost: { title: 3 },
      boostDocument: (_, __, stored) => (stored?.["kind"] === "colour" ? 1.5 : 1),
      prefix: true,
      fuzzy: (term) => (term.length > 3 && !/\d/.test(term) ? 0.25 : false),
      combineWith: "AND",
    },
  });
  engine.addAll(globalThis.searchDocuments ?? []);
  return { engine, letters: new Set() };
}

/** Whether parts that the words ask for are not there yet: then they are fetched, and shown when they have come. */
function fetchMissing(
  { engine, letters }: SearchIndex,
  words: string,
  root: string,
  show: () => void,
): boolean {
  const filed = globalThis.searchLetters ?? [];
  const missing = searchedLetters(words).filter(
    (letter) => filed.includes(letter) && !letters.has(letter),
  );
  if (missing.length === 0) return false;
  for (const letter of missing) letters.add(letter);
  void Promise.all(
    missing.map(async (letter) => {
      if (!(await loaded(root + searchPartPath(letter)))) letters.delete(letter);
      const part = globalThis.searchParts?.[letter] ?? [];
      engine.addAll(part.filter(({ id }) => !engine.has(id)));
      return letters.has(letter);
    }),
  ).then((came) => {
    if (came.some((one) => one)) show();
  });
  return true;
}

function results({ engine }: SearchIndex, words: string): SearchDocument[] {
  // A code is typed with and without its space.
  const joined = words.replace(/\b([a-z]{1,4}) (\d+)/gi, "$1$2");
  return engine.search(joined).slice(0, MOST) as unknown as SearchDocument[];
}

function entry(
  { kind, title, text, href, colours = [] }: SearchDocument,
  root: string,
  words: DOMStringMap,
): HTMLElement {
  const link = document.createElement("a");
  link.className = "found__entry";
  // Opened from a folder there is no server to find a folder's page.
  link.href = root + href + (location.protocol === "file:" ? "index.html" : "");
  const strip = document.createElement("span");
  strip.className = "found__strip";
  strip.append(...colours.map(({ hex, displayP3 }) => swatch(hex, displayP3)));
  const name = document.createElement("span");
  name.className = "found__title";
  name.textContent = title;
  const note = document.createElement("span");
  note.className = "found__note";
  note.textContent = kind === "colour" ? text : [words[kind], text].filter(Boolean).join(", ");
  link.append(strip, name, note);
  return link;
}

function said(text: string): HTMLElement {
  const line = document.createElement("p");
  line.className = "found__none";
  line.textContent = text;
  return line;
}

/** As templates/macros/swatch.njk draws it. */
function swatch(hex: string, displayP3: string | undefined): SVGElement {
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("class", "swatch");
  svg.setAttribute("viewBox", "0 0 1 1");
  svg.setAttribute("preserveAspectRatio", "none");
  svg.setAttribute("aria-hidden", "true");
  const group = document.createElementNS(SVG, "g");
  group.setAttribute("fill", hex);
  const shape = document.createElementNS(SVG, "path");
  shape.setAttribute("d", "M0 0h1v1H0z");
  if (displayP3 !== undefined) shape.setAttribute("fill", displayP3);
  group.append(shape);
  svg.append(group);
  return svg;
}
