import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults, RunOptions } from "axe-core";
import type { Page } from "playwright-core";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Rules of WCAG 2.2, A and AA. */
const OF_WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
/** Rules by which what is drawn alike passes alike: by its own colour and what lies behind it. */
const OF_COLOUR = ["color-contrast", "link-in-text-block"];

const BUT_FOR_COLOUR = Object.fromEntries(OF_COLOUR.map((rule) => [rule, { enabled: false }]));

/** What axe finds on a page by all its rules but those of colour. */
export async function axeViolations(page: Page): Promise<string[]> {
  return told(await run(page, "document", { rules: BUT_FOR_COLOUR }));
}

/** What it finds by WCAG 2.2, A and AA, but for colour. */
export async function wcagViolations(page: Page): Promise<string[]> {
  return told(await run(page, "document", { runOnly: OF_WCAG, rules: BUT_FOR_COLOUR }));
}

/**
 * Of each way in which a page draws a text one element, in `textsByWay`, and those ways: the elements around it with their
 * classes, its colour, size and weight, and every background behind it.
 */
const TEXTS_BY_WAY = `(() => {
  const chains = new Map([[null, ""]]);
  const chain = (one) => {
    const known = chains.get(one);
    if (known !== undefined) return known;
    const { backgroundColor, backgroundImage, opacity, position } = getComputedStyle(one);
    const own = [one.tagName, one.getAttribute("class"), backgroundColor, backgroundImage, opacity, position];
    const whole = chain(one.parentElement) + "/" + own.join(" ");
    chains.set(one, whole);
    return whole;
  };
  const found = new Map();
  for (const one of document.body.querySelectorAll("*")) {
    if (![...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== "")) continue;
    if (one.getClientRects().length === 0) continue;
    const { color, fill, fontSize, fontWeight, textDecorationLine } = getComputedStyle(one);
    const way = [chain(one), color, fill, fontSize, fontWeight, textDecorationLine].join(" ");
    if (!found.has(way)) found.set(way, one);
  }
  globalThis.textsByWay = [...found.values()];
  return [...found.keys()];
})()`;

/**
 * What axe finds by its rules of colour on texts that are drawn in none of the ways of `drawn`, to which theirs are added:
 * most of the time that it takes for a page it looks at row after row of a table.
 */
export async function colourViolations(page: Page, drawn: Set<string>): Promise<string[]> {
  const isFirst = drawn.size === 0;
  const ways = await page.evaluate<string[]>(TEXTS_BY_WAY);
  const places = ways.flatMap((way, place) => (drawn.has(way) ? [] : [place]));
  for (const way of ways) drawn.add(way);
  if (places.length === 0) return [];
  const texts = `{ include: ${JSON.stringify(places)}.map((place) => globalThis.textsByWay[place]) }`;
  const found = await run(page, texts, { runOnly: OF_COLOUR });
  if (isFirst && !found.passes.some(({ id }) => id === "color-contrast"))
    return ["axe looked at no text's contrast"];
  return told(found);
}

async function run(page: Page, context: string, options: RunOptions): Promise<AxeResults> {
  if (!(await page.evaluate<boolean>("'axe' in globalThis"))) await page.evaluate(AXE);
  // Every rule is run; of a rule that passes no node is described but the first.
  const asked = JSON.stringify({ ...options, resultTypes: ["violations"] });
  return page.evaluate<AxeResults>(`axe.run(${context}, ${asked})`);
}

function told({ violations }: AxeResults): string[] {
  return violations.flatMap(({ id, nodes }) =>
    nodes
      .slice(0, 5)
      .map(
        ({ target, failureSummary }) =>
          `${id} ${target.join(" ")} ${failureSummary?.replaceAll(/\s+/g, " ") ?? ""}`,
      ),
  );
}
