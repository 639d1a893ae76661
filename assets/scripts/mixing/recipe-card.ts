/** A mixture as a card to print and lay beside the palette. */
import { addressOf, type BenchState } from "../../../lib/mixing/mix-address.ts";
import { partsOf, type MixPart } from "../../../lib/mixing/mix.ts";
import { paintName, type MixingRange } from "../../../lib/mixing/mixing-range.ts";
import { volumeMix } from "../../../lib/mixing/prediction/mass-mix.ts";
import type { PredictedMix } from "../../../lib/mixing/prediction/predicted-mix.ts";
import type { Seen } from "../../../lib/mixing/prediction/seen-mix.ts";
import { MIXING_PAGES as TEXT, NUMBERS } from "../../../lib/words/in-browser/mixing.ts";
import { made, newSwatch, termRows } from "./drawn.ts";

const CARD = TEXT.bench.card;

interface CardContent {
  readonly found: PredictedMix;
  readonly as: Seen;
  readonly p68: number;
  readonly figures: readonly (readonly [string, string])[];
  readonly state: BenchState;
  readonly range: MixingRange;
  readonly name: string | undefined;
}

export function filledCard(place: HTMLElement, content: CardContent): void {
  const { found, as, p68, figures, state, range, name } = content;
  const address = new URL(location.href);
  address.search = addressOf(state);
  const heading = made("h2", "recipe-card__heading", name ?? CARD.heading);
  const swatch = made("div", "recipe-card__swatch", newSwatch(as.shown));
  place.replaceChildren(
    made("div", "recipe-card__panel", swatch),
    made(
      "div",
      "recipe-card__body",
      made("p", "recipe-card__kind", CARD.heading),
      heading,
      partsTable(found, range),
      made(
        "p",
        "recipe-card__trust",
        TEXT.bench.predicted(
          NUMBERS.decimal(p68, 1),
          NUMBERS.decimal((p68 * found.uncertainty.p90) / found.uncertainty.p68, 1),
        ),
      ),
      made("dl", "bench-figures", ...termRows(figures)),
      made(
        "p",
        "recipe-card__blank",
        `${CARD.madeOn} `,
        made("span", ""),
        ` ${CARD.notes} `,
        made("span", ""),
      ),
      made(
        "p",
        "note",
        `${CARD.from(range.data.workshop, range.data.revision)}. ${CARD.paperNote}`,
      ),
      made("p", "note recipe-card__address", address.href),
    ),
  );
}

/** Parts by volume, where densities tell, and by weight: of the smallest one, and as shares. */
function partsTable({ mass }: PredictedMix, range: MixingRange): HTMLElement {
  const volume = volumeMix(mass, range);
  const ways = [
    ...(volume === undefined ? [] : [{ head: CARD.byVolume, parts: partsOf(volume) }]),
    { head: CARD.byMass, parts: partsOf(mass) },
  ];
  const head = made(
    "tr",
    "",
    cell("th", CARD.part, "col"),
    ...ways.map((way) => cell("th", way.head, "col", true)),
  );
  const rows = partsOf(mass).map(({ slug }) =>
    made(
      "tr",
      "",
      cell("th", paintName(slug, range), "row"),
      ...ways.map(({ parts }) => cell("td", partText(slug, parts), undefined, true)),
    ),
  );
  return made("table", "data-table", made("thead", "", head), made("tbody", "", ...rows));
}

function partText(slug: string, parts: readonly MixPart[]): string {
  const total = parts.reduce((sum, part) => sum + part.parts, 0);
  const least = Math.min(...parts.map((part) => part.parts).filter((one) => one > 0));
  const own = parts.find((part) => part.slug === slug)?.parts ?? 0;
  return `${NUMBERS.significant(own / least, 2)} (${CARD.share(NUMBERS.significant((100 * own) / total, 2))})`;
}

function cell(name: "th" | "td", text: string, scope?: string, isNumber = false): HTMLElement {
  const element = made(name, isNumber ? "number" : "", text);
  if (scope !== undefined) element.setAttribute("scope", scope);
  return element;
}
