/**
 * Any two to four colours side by side. The address holds which (`?colours=bone-black,spinel-black`), so that a
 * reload, a bookmark and Back and Forward show the same; each colour's figures are fetched from beside the page, and
 * the modules that draw the built pages draw these.
 */
import { nearestWord } from "../../lib/diagnostics/nearest-word.ts";
import { comparisonMarkup } from "../../lib/present/comparison-html.ts";
import { comparisonView } from "../../lib/present/comparison-model.ts";
import type { ShownColour } from "../../lib/present/comparison-types.ts";
import { COMPARE_PAGES as TEXT, COMPARISON_RULINGS } from "../../lib/words/in-browser/compare.ts";

/** From the page compare/index.html to the root of the site, wherever that lies. */
const ROOT = "../";
const MOST = 4;
const KEY = "colours";

for (const root of document.querySelectorAll<HTMLElement>("[data-compare]")) compare(root);

function compare(root: HTMLElement): void {
  const picker = root.querySelector<HTMLDetailsElement>("[data-picker]");
  const without = document.querySelector<HTMLElement>("[data-without]");
  const status = root.querySelector<HTMLElement>("[data-status]");
  const toResult = root.querySelector<HTMLElement>("[data-to-result]");
  const said = root.querySelector<HTMLElement>("[data-said]");
  const result = root.querySelector<HTMLElement>("[data-result]");
  if (
    picker === null ||
    without === null ||
    status === null ||
    toResult === null ||
    said === null ||
    result === null
  )
    return;
  const buttons = [...picker.querySelectorAll("button")];
  const known = new Map(
    buttons.map((button) => [button.value, button.textContent.trim()] as const),
  );
  const areSome = root.hasAttribute("data-some");
  const plainTitle = document.title;
  const fetched = new Map<string, Promise<ShownColour>>();
  let latest = 0;

  const show = async (): Promise<void> => {
    const turn = ++latest;
    const { slugs, remarks } = asked(known, areSome);
    for (const button of buttons)
      button.setAttribute("aria-pressed", String(slugs.includes(button.value)));
    if (slugs.length < 2) {
      result.replaceChildren();
      toResult.hidden = true;
      document.title = plainTitle;
      said.textContent = "";
      status.textContent = [...remarks, TEXT.form.tooFew(known.get(slugs[0] ?? ""))].join(" ");
      return;
    }
    try {
      const colours = await Promise.all(slugs.map((slug) => figuresOf(slug, fetched)));
      // A later choice may have been answered first.
      if (turn !== latest) return;
      const view = comparisonView(
        colours,
        { compare: TEXT, rulings: COMPARISON_RULINGS, notStated: TEXT.missing },
        ROOT,
      );
      result.innerHTML = comparisonMarkup(view, TEXT);
      toResult.hidden = !picker.open;
      document.title = `${TEXT.pairHeading(colours.map(({ name }) => name))} \u2013 ${plainTitle}`;
      status.textContent = remarks.join(" ");
      // For who does not see that the tables changed: the same stands above them.
      said.textContent = view.summary;
    } catch (error) {
      if (turn !== latest) return;
      if (!(error instanceof TypeError)) throw error;
      result.replaceChildren();
      toResult.hidden = true;
      said.textContent = "";
      status.textContent = TEXT.form.failed;
    }
  };

  for (const button of buttons)
    button.addEventListener("click", () => {
      const { slugs } = asked(known, areSome);
      const isChosen = slugs.includes(button.value);
      if (!isChosen && slugs.length === MOST) {
        status.textContent = TEXT.form.tooMany;
        return;
      }
      const chosen = isChosen
        ? slugs.filter((slug) => slug !== button.value)
        : [...slugs, button.value];
      const address = new URL(location.href);
      address.hash = "";
      address.search = chosen.length === 0 ? "" : `${KEY}=${chosen.join(",")}`;
      history.pushState(null, "", address);
      void show();
    });
  addEventListener("popstate", () => void show());
  without.hidden = true;
  picker.hidden = false;
  picker.open = asked(known, areSome).slugs.length < 2;
  void show();
}

/**
 * The colours that the address asks for and the site has, each once, four at most; and what it asks for besides.
 * @param areSome whether the site may have more colours than can be pressed.
 */
function asked(
  known: ReadonlyMap<string, string>,
  areSome: boolean,
): {
  readonly slugs: readonly string[];
  readonly remarks: readonly string[];
} {
  const wanted = [
    ...new Set(
      (new URLSearchParams(location.search).get(KEY) ?? "")
        .split(",")
        .filter((slug) => slug !== ""),
    ),
  ];
  const isAny = (slug: string): boolean =>
    known.has(slug) || (areSome && /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(slug));
  const slugs = wanted.filter(isAny);
  const remarks = wanted
    .filter((slug) => !isAny(slug))
    .map((slug) => TEXT.form.unknown(slug, known.get(nearestWord(slug, known.keys()) ?? "")));
  return {
    slugs: slugs.slice(0, MOST),
    remarks: [...remarks, ...(slugs.length > MOST ? [TEXT.form.leftOut] : [])],
  };
}

function figuresOf(slug: string, fetched: Map<string, Promise<ShownColour>>): Promise<ShownColour> {
  const figures = fetched.get(slug) ?? fetchedFigures(slug);
  fetched.set(slug, figures);
  // What failed once may be there the next time.
  figures.catch(() => fetched.delete(slug));
  return figures;
}

/** @throws TypeError when nothing can be fetched, as `fetch` does, or what comes is no figures. */
async function fetchedFigures(slug: string): Promise<ShownColour> {
  const answer = await fetch(new URL(`${slug}.json`, document.baseURI));
  if (!answer.ok)
    throw new TypeError(`The server answered ${answer.status}, not with the figures of ${slug}`);
  return (await answer.json()) as ShownColour;
}
