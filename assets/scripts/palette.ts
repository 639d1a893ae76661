/**
 * A chosen set of tubes, kept in the address (`?set=bone-black,titanium-white&white=titanium-white&L=50`): its reach,
 * its gaps, the order of layering.
 */
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { nearestWord } from "../../lib/diagnostics/nearest-word.ts";
import { fatterBelow, layeringOrder } from "../../lib/mixing/layering-order.ts";
import type { MixingPaint } from "../../lib/mixing/mixing-paint.ts";
import { mixableColours, paintName, type MixingRange } from "../../lib/mixing/mixing-range.ts";
import { edgeAt, reachedShare, type Hull } from "../../lib/mixing/reach/hull.ts";
import { chosenHulls } from "../../lib/mixing/reach/range-reach.ts";
import { receivedHull, type SentReach } from "../../lib/mixing/reach/sent-reach.ts";
import { rangeMap } from "../../lib/plots/range-map.ts";
import { differenceText, percentText } from "../../lib/present/mix-facts-text.ts";
import {
  MIXING_PAGES as TEXT,
  mixingSentence,
  NUMBERS,
} from "../../lib/words/in-browser/mixing.ts";
import { held, made } from "./mixing/drawn.ts";
import { withRange } from "./mixing/page-data.ts";
import { mixingReaches } from "./mixing/sent-reach.ts";

/** C*ab within which the names of blacks find no room in the map. */
const CROWDED = 6;

const PALETTE = TEXT.palette;
/** A palette that falls short of the range by less [Delta-E00] has no gap there. */
const GAP_FROM = 8;
/** A tube brings a gap when the range without it reaches less far by this [C*ab]. */
const BRINGS_FROM = 2;
/** Directions in which gaps are looked for. */
const DIRECTIONS = 72;

/** Hue angles [degree] at which the hues of PALETTE.hues begin: by the eye, no standard draws them. */
const HUE_FROM = [10, 45, 75, 100, 130, 175, 220, 285, 310, 340];

withRange("[data-palette]", palette);

function palette(at: HTMLElement, paints: MixingRange): void {
  const buttons = [...at.querySelectorAll("button.tile")].filter(
    (button) => button instanceof HTMLButtonElement,
  );
  const status = held(at, "[data-status]", HTMLElement);
  const white = held(at, "[data-white]", HTMLSelectElement);
  const levels = [...at.querySelectorAll<HTMLInputElement>("input[name=L]")];
  const { chosen: first, remarks } = asked(white, levels, paints);
  let chosen = first;

  const show = (said: readonly string[] = []): void => {
    for (const button of buttons)
      button.setAttribute("aria-pressed", String(chosen.some(({ slug }) => slug === button.value)));
    const isEnough = chosen.filter(({ kind }) => kind === "colour").length >= 2;
    held(at, "[data-body]", HTMLElement).hidden = !isEnough;
    // Until there is a palette, the order of the whole range stands in its place.
    document.querySelector("[data-static]")?.classList.toggle("palette-static", isEnough);
    status.textContent = [...said, ...(isEnough ? [] : [PALETTE.tooFew])].join(" ");
    if (!isEnough) return;
    const L = Number(levels.find(({ checked }) => checked)?.value);
    showReach(at, { chosen, white: white.value, L }, paints);
    held(at, "[data-order]", HTMLElement).replaceChildren(
      orderTable(chosen, at.dataset["root"] ?? ""),
    );
  };

  const changed = (): void => {
    const address = new URL(location.href);
    const level = levels.find(({ checked }) => checked);
    address.search = [
      ...(chosen.length === 0 ? [] : [`set=${chosen.map(({ slug }) => slug).join(",")}`]),
      ...(white.selectedIndex > 0 ? [`white=${white.value}`] : []),
      ...(level === undefined || level.defaultChecked ? [] : [`L=${level.value}`]),
    ].join("&");
    history.replaceState(null, "", address);
    show();
  };

  for (const button of buttons)
    button.addEventListener("click", () => {
      const paint = paints.paint(button.value);
      if (paint === undefined) return;
      chosen = chosen.includes(paint) ? chosen.filter((one) => one !== paint) : [...chosen, paint];
      changed();
    });
  for (const field of [white, ...levels]) field.addEventListener("change", changed);
  held(at, "[data-print]", HTMLButtonElement).addEventListener("click", () => print());
  show(remarks);
}

/** What the address asks for: white and level go into their fields. */
function asked(
  white: HTMLSelectElement,
  levels: readonly HTMLInputElement[],
  paints: MixingRange,
): { chosen: MixingPaint[]; remarks: string[] } {
  const given = new URLSearchParams(location.search);
  const remarks: string[] = [];
  const known = (slug: string): MixingPaint | undefined => {
    const paint = paints.paint(slug);
    if (paint !== undefined) return paint;
    const near = paints.paint(
      nearestWord(
        slug,
        paints.data.paints.map((one) => one.slug),
      ) ?? "",
    );
    remarks.push(
      mixingSentence({
        rule: "no-such-paint",
        values: { slug, ...(near === undefined ? {} : { near: near.name }) },
      }),
    );
    return undefined;
  };
  const slugs = (given.get("set") ?? "").split(",").filter(Boolean);
  const chosen = [...new Set(slugs)].flatMap((slug) => known(slug) ?? []);
  const [askedWhite, askedLevel] = [given.get("white"), given.get("L")];
  const refused = (key: string, value: string): void => {
    remarks.push(mixingSentence({ rule: "no-such-choice", values: { key, value } }));
  };
  if (askedWhite !== null) {
    if ([...white.options].some(({ value }) => value === askedWhite)) white.value = askedWhite;
    else refused("white", askedWhite);
  }
  const level = levels.find(({ value }) => value === askedLevel);
  if (level !== undefined) level.checked = true;
  else if (askedLevel !== null) refused("L", askedLevel);
  return { chosen, remarks };
}

interface Wish {
  readonly chosen: readonly MixingPaint[];
  readonly white: string;
  /** At which the map is drawn. */
  readonly L: number;
}

function showReach(at: HTMLElement, { chosen, white, L }: Wish, paints: MixingRange): void {
  const mixing = mixableColours(paints, white);
  const own = chosenHulls(
    paints,
    white,
    chosen.filter((paint) => mixing.includes(paint)),
  );
  const unlike = chosen.filter((paint) => paint.kind === "colour" && !mixing.includes(paint));
  const sent = mixingReaches?.find((one) => one.white === white);
  const whole = (sent?.levels ?? []).map((level) => receivedHull(level.L, level.all));
  const drawn = chosen.flatMap(({ name, slug, lab, screen }) =>
    lab === undefined || screen === undefined
      ? []
      : [
          {
            label: name,
            href: `${at.dataset["root"] ?? ""}colours/${slug}/`,
            colour: screen,
            a: lab[1],
            b: lab[2],
            trail: [],
          },
        ],
  );
  const places = (hulls: readonly Hull[]): Hull["corners"] =>
    hulls.find((one) => one.L === L)?.corners ?? [];
  held(at, "[data-map]", HTMLElement).innerHTML =
    drawn.length === 0
      ? ""
      : rangeMap({
          idPrefix: "palette-map",
          width: 480,
          title: PALETTE.reachTitle,
          description: PALETTE.reachTitle,
          colours: drawn,
          axes: TEXT.map.axes,
          crowd: { withinChroma: CROWDED, word: TEXT.map.nearNeutral },
          outlines: [
            { label: PALETTE.yours, places: places(own) },
            { label: PALETTE.wholeRange, places: places(whole) },
          ],
        }).svg;
  held(at, "[data-share]", HTMLElement).textContent = [
    PALETTE.shown(paints.paint(white)?.name ?? white, L),
    PALETTE.share(
      own.flatMap((hull) => {
        const all = whole.find((one) => one.L === hull.L);
        return all === undefined
          ? []
          : [PALETTE.shareAt(percentText(reachedShare(hull, all)), hull.L)];
      }),
    ),
    ...(unlike.length === 0
      ? []
      : [
          PALETTE.unlike(
            unlike.map(({ name }) => name),
            paints.paint(white)?.name ?? white,
          ),
        ]),
  ].join(" ");
  const rows = sent === undefined ? [] : gapRows(own, sent, chosen, paints);
  const { gapColumns } = PALETTE;
  held(at, "[data-gaps]", HTMLElement).replaceChildren(
    ...(rows.length === 0
      ? [made("p", "", PALETTE.noGaps)]
      : [
          table(
            PALETTE.gapsCaption,
            [gapColumns.hue, ...own.map(({ L }) => PALETTE.gapAt(L)), gapColumns.bring],
            rows,
          ),
          made("p", "note", PALETTE.gapsNote),
        ]),
  );
}

/** How far a palette falls short of the range, at one level and hue. */
interface Gap {
  readonly L: number;
  readonly angle: number;
  readonly chroma: number;
  /** Delta-E00, and what it may be off, 68 %. */
  readonly short: number;
  readonly p68: number;
}

/** Hues in which the range reaches clearly further: the widest gap at each level, and the tubes that would close it. */
function gapRows(
  own: readonly Hull[],
  { levels }: SentReach,
  chosen: readonly MixingPaint[],
  paints: MixingRange,
): (readonly string[])[] {
  const byLevel = levels.map(({ L, all }) => {
    const [whole, hull] = [receivedHull(L, all), own.find((one) => one.L === L)];
    return Array.from({ length: DIRECTIONS }, (_, i) => (i / DIRECTIONS) * 2 * Math.PI).flatMap(
      (angle) => gapAt(whole, hull, angle) ?? [],
    );
  });
  const wider = (one: Gap, other: Gap): number => other.short - one.short;
  return PALETTE.hues.flatMap((hue, sector) => {
    const widest = byLevel.map((gaps) => {
      const [found] = gaps.filter(({ angle }) => hueSector(angle) === sector).toSorted(wider);
      return found === undefined || found.short < GAP_FROM ? undefined : found;
    });
    const [worst] = widest.filter((gap) => gap !== undefined).toSorted(wider);
    if (worst === undefined) return [];
    const bring = bringing(worst, levels, chosen, paints);
    return [
      [
        PALETTE.gapHue(hue),
        ...widest.map((gap) =>
          gap === undefined ? PALETTE.gapNone : differenceText(gap.short, gap.p68, NUMBERS),
        ),
        bring.length === 0 ? PALETTE.gapByNone : PALETTE.gapBy(bring),
      ],
    ];
  });
}

function gapAt(whole: Hull, own: Hull | undefined, angle: number): Gap | undefined {
  const edge = edgeAt(whole, angle);
  if (edge === undefined) return undefined;
  const reached = (own && edgeAt(own, angle)) ?? { chroma: 0, p68: 0 };
  const lab = (chroma: number): Lab => ({
    L: whole.L,
    a: chroma * Math.cos(angle),
    b: chroma * Math.sin(angle),
  });
  return {
    L: whole.L,
    angle,
    chroma: edge.chroma,
    short: edge.chroma > reached.chroma ? deltaE00(lab(edge.chroma), lab(reached.chroma)) : 0,
    p68: Math.hypot(edge.p68, reached.p68),
  };
}

/** Tubes that are not chosen and without which the range itself would stop short there. */
function bringing(
  { L, angle, chroma }: Gap,
  levels: SentReach["levels"],
  chosen: readonly MixingPaint[],
  paints: MixingRange,
): string[] {
  const without = levels.find((level) => level.L === L)?.without ?? {};
  return Object.entries(without)
    .map(([slug, left]) => ({
      slug,
      lost: chroma - (edgeAt(receivedHull(L, left), angle)?.chroma ?? 0),
    }))
    .filter(({ slug, lost }) => lost > BRINGS_FROM && !chosen.some((one) => one.slug === slug))
    .toSorted((one, other) => other.lost - one.lost)
    .slice(0, 2)
    .map(({ slug }) => paintName(slug, paints));
}

function hueSector(angle: number): number {
  const degrees = (angle * 180) / Math.PI;
  const at = HUE_FROM.findLastIndex((from) => degrees >= from);
  return at === -1 ? HUE_FROM.length - 1 : at;
}

function orderTable(chosen: readonly MixingPaint[], toRoot: string): HTMLElement {
  const ordered = layeringOrder(chosen);
  const fatter = fatterBelow(ordered);
  return table(
    PALETTE.order,
    Object.values(PALETTE.columns),
    ordered.map(({ slug, name, facts }, i) => {
      const link = made("a", "", name);
      link.href = `${toRoot}colours/${slug}/`;
      const { drying, oil, lightfastness } = facts;
      const [days = "", share = "", lasts = ""] = [drying, oil, lightfastness].map(
        (fact) => fact?.text ?? TEXT.facts.notKnown,
      );
      const below = fatter[i];
      const remark = below === undefined ? "" : made("span", "note", PALETTE.leaner(below.name));
      return [
        link,
        days,
        below === undefined ? share : made("span", "", share, " ", remark),
        lasts,
      ];
    }),
  );
}

/** @param rows the first of each names it. */
function table(
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly (Node | string)[])[],
): HTMLElement {
  const head = (text: Node | string, scope: "col" | "row"): HTMLElement => {
    const cell = made("th", "", text);
    cell.scope = scope;
    return cell;
  };
  return made(
    "table",
    "data-table",
    made("caption", "hidden", caption),
    made("thead", "", made("tr", "", ...heads.map((text) => head(text, "col")))),
    made(
      "tbody",
      "",
      ...rows.map(([first = "", ...others]) =>
        made("tr", "", head(first, "row"), ...others.map((text) => made("td", "", text))),
      ),
    ),
  );
}
