/** A chosen set of tubes, kept in the address (`?set=bone-black,titanium-white`): its reach, its gaps, the order of layering. */
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { nearestWord } from "../../lib/diagnostics/nearest-word.ts";
import { layeringOrder } from "../../lib/mixing/layering-order.ts";
import type { MixingPaint } from "../../lib/mixing/mixing-paint.ts";
import type { MixingRange } from "../../lib/mixing/mixing-range.ts";
import {
  DIRECTIONS,
  directionAngle,
  outline,
  outlineArea,
  pairWays,
  type Outline,
} from "../../lib/mixing/reach/range-outline.ts";
import type { LadderModel } from "../../lib/optics/tints/ladder.ts";
import { rangeMap } from "../../lib/plots/range-map.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { MIXING_PAGES as TEXT } from "../../lib/words/en/mixing-pages.ts";
import { mixingSentence } from "../../lib/words/en/statements-mixing.ts";
import { decimalText } from "../../lib/words/number-text.ts";
import { held, made } from "./mixing/drawn.ts";
import { withRange } from "./mixing/page-data.ts";
import { mixingReach, type SentReach } from "./mixing/sent-reach.ts";

const PALETTE = TEXT.palette;
const KEY = "set";
const LEVEL = 50;
/** A palette that falls short of the range by less [Delta-E00] has no gap there. */
const GAP_FROM = 8;

/** Hue angles [degree] at which the hues of PALETTE.hues begin: by the eye, no standard draws them. */
const HUE_FROM = [10, 45, 75, 100, 130, 175, 220, 285, 310, 340];

withRange("[data-palette]", (at, paints) => {
  document.querySelector("[data-static]")?.classList.add("palette-static");
  palette(at, paints);
});

function palette(at: HTMLElement, paints: MixingRange): void {
  const buttons = [...at.querySelectorAll("button.tile")].filter(
    (button) => button instanceof HTMLButtonElement,
  );
  const status = held(at, "[data-status]", HTMLElement);
  const show = (): void => {
    const { chosen, remarks } = asked(paints);
    for (const button of buttons)
      button.setAttribute("aria-pressed", String(chosen.some(({ slug }) => slug === button.value)));
    const colours = chosen.filter(({ kind }) => kind === "colour");
    held(at, "[data-body]", HTMLElement).hidden = colours.length < 2;
    status.textContent = [...remarks, ...(colours.length < 2 ? [PALETTE.tooFew] : [])].join(" ");
    if (colours.length < 2) return;
    showReach(at, chosen, paints);
    held(at, "[data-order]", HTMLElement).replaceChildren(
      orderTable(chosen, at.dataset["root"] ?? ""),
    );
  };
  for (const button of buttons)
    button.addEventListener("click", () => {
      const slugs = asked(paints).chosen.map(({ slug }) => slug);
      const next = slugs.includes(button.value)
        ? slugs.filter((slug) => slug !== button.value)
        : [...slugs, button.value];
      const address = new URL(location.href);
      address.search = next.length === 0 ? "" : `${KEY}=${next.join(",")}`;
      history.replaceState(null, "", address);
      show();
    });
  held(at, "[data-print]", HTMLButtonElement).addEventListener("click", () => print());
  show();
}

function asked(paints: MixingRange): { chosen: MixingPaint[]; remarks: string[] } {
  const slugs = (new URLSearchParams(location.search).get(KEY) ?? "").split(",").filter(Boolean);
  const remarks: string[] = [];
  const chosen = [...new Set(slugs)].flatMap((slug) => {
    const paint = paints.paint(slug);
    if (paint === undefined) {
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
    }
    return paint ?? [];
  });
  return { chosen, remarks };
}

/** In the range's first white, as the map of the range is. */
function showReach(at: HTMLElement, chosen: readonly MixingPaint[], paints: MixingRange): void {
  const white = paints.whites[0]?.slug ?? "";
  const ladders = chosen.flatMap(({ slug }): LadderModel[] => {
    const ladder = paints.ladder(slug, white);
    return isStatement(ladder) ? [] : [ladder];
  });
  const own = outline(pairWays(ladders, LEVEL));
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
  const places = (reached: Outline): { a: number; b: number }[] =>
    reached.map((radius, i) => ({
      a: radius * Math.cos(directionAngle(i)),
      b: radius * Math.sin(directionAngle(i)),
    }));
  held(at, "[data-map]", HTMLElement).innerHTML = rangeMap({
    idPrefix: "palette-map",
    width: 480,
    title: PALETTE.reachTitle,
    description: PALETTE.reachTitle,
    colours: drawn,
    axes: TEXT.map.axes,
    outlines: [
      { label: PALETTE.yours, places: places(own) },
      ...(mixingReach === undefined
        ? []
        : [{ label: PALETTE.wholeRange, places: places(mixingReach.all) }]),
    ],
  }).svg;
  const whole = mixingReach === undefined ? 0 : outlineArea(mixingReach.all);
  held(at, "[data-share]", HTMLElement).textContent =
    whole > 0
      ? PALETTE.share(`${decimalText(Math.min((100 * outlineArea(own)) / whole, 100), 0)}\u00a0%`)
      : "";
  const gaps = mixingReach === undefined ? [] : gapsOf(own, mixingReach, chosen, paints);
  held(at, "[data-gaps]", HTMLElement).replaceChildren(
    ...(gaps.length === 0 ? [PALETTE.noGaps] : gaps).map((text) => made("li", "", text)),
  );
}

/** Hues in which the range reaches clearly further, the widest gap of each, with the tubes that would close it. */
function gapsOf(
  own: Outline,
  { all, without: left }: SentReach,
  chosen: readonly MixingPaint[],
  paints: MixingRange,
): string[] {
  const lab = (radius: number, i: number): { L: number; a: number; b: number } => ({
    L: LEVEL,
    a: radius * Math.cos(directionAngle(i)),
    b: radius * Math.sin(directionAngle(i)),
  });
  const gaps = all.map((radius, i) => ({
    i,
    short: radius > (own[i] ?? 0) ? deltaE00(lab(radius, i), lab(own[i] ?? 0, i)) : 0,
  }));
  return PALETTE.hues.flatMap((hue, sector) => {
    const inSector = gaps.filter(({ i }) => hueSector(i) === sector);
    const [widest] = inSector.toSorted((one, other) => other.short - one.short);
    if (widest === undefined || widest.short < GAP_FROM) return [];
    const bring = Object.entries(left)
      .map(([slug, reached]) => ({ slug, lost: (all[widest.i] ?? 0) - (reached[widest.i] ?? 0) }))
      .filter(({ slug, lost }) => lost > 2 && !chosen.some((one) => one.slug === slug))
      .toSorted((one, other) => other.lost - one.lost)
      .slice(0, 2)
      .map(({ slug }) => paints.paint(slug)?.name ?? slug);
    return [
      PALETTE.gap(
        hue,
        LEVEL,
        decimalText(widest.short, 0),
        bring.length === 0 ? "" : PALETTE.gapBy(bring),
      ),
    ];
  });
}

function hueSector(direction: number): number {
  const degrees = (direction * 360) / DIRECTIONS;
  const at = HUE_FROM.findLastIndex((from) => degrees >= from);
  return at === -1 ? HUE_FROM.length - 1 : at;
}

function orderTable(chosen: readonly MixingPaint[], toRoot: string): HTMLElement {
  const { columns } = PALETTE;
  const head = made(
    "tr",
    "",
    ...Object.values(columns).map((text) => {
      const cell = made("th", "", text);
      cell.scope = "col";
      return cell;
    }),
  );
  const rows = layeringOrder(chosen).map(({ slug, name, facts }) => {
    const link = made("a", "", name);
    link.href = `${toRoot}colours/${slug}/`;
    const first = made("th", "", link);
    first.scope = "row";
    return made(
      "tr",
      "",
      first,
      ...[facts.drying?.text, facts.oil?.text, facts.lightfastness?.text].map((text) =>
        made("td", "", text ?? TEXT.facts.notKnown),
      ),
    );
  });
  return made("table", "data-table", made("thead", "", head), made("tbody", "", ...rows));
}
