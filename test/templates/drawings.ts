import { spreadOf } from "../../lib/collection/spread.ts";
import { ladderStrip } from "../../lib/plots/ladder-strip.ts";
import { placeInRange } from "../../lib/plots/place-in-range.ts";
import { spectralCurve } from "../../lib/plots/spectral-curve.ts";
import { tintTrail } from "../../lib/plots/tint-trail.ts";
import { asMarkup, type Markup, type PictureView } from "../../lib/present/views.ts";

/** Invented drawings, so that pages are laid out with the real shapes and sizes. */

const PANEL_GREY = "#939393";

/** A catalogue swatch: masstone above, tint below, on N 6. */
export function swatch(fill: string, name: string, tint: string): Markup {
  return asMarkup(
    `<svg class="plot plot--card" viewBox="0 0 120 84" role="img" aria-label="${name}"><rect class="panel" width="120" height="84" fill="${PANEL_GREY}"/><g class="swatch" fill="${fill}"><rect width="120" height="54"/></g><g class="swatch" fill="${tint}"><rect y="60" width="120" height="24"/></g></svg>`,
  );
}

/** A swatch in a table's cell. */
export function cellSwatch(fill: string): Markup {
  return asMarkup(
    `<svg class="plot plot--cell" viewBox="0 0 44 26" width="44" height="26" aria-hidden="true"><rect class="panel" width="44" height="26" fill="${PANEL_GREY}"/><g class="swatch" fill="${fill}"><rect x="6" y="5" width="32" height="16"/></g></svg>`,
  );
}

export function ladder(
  id: string,
  heading: string,
  fills: readonly string[],
  caption: string,
): PictureView {
  const labels = ["masstone", "1:1", "1:2", "1:5", "1:10", "1:20", "1:50"];
  return {
    svg: asMarkup(
      ladderStrip({
        idPrefix: id,
        title: caption,
        description: caption,
        heading,
        axisLabel: "colour : white, paint by mass",
        missing: "not stated",
        steps: fills.map((hex, i) => ({
          whiteParts: i,
          label: labels[i] ?? String(i),
          colour: { hex },
          standing: i % 2 === 0 ? ("measured" as const) : ("derived" as const),
          ...(i === 4 ? { suspect: "suspect" } : {}),
        })),
      }),
    ),
    caption,
  };
}

export function trail(id: string, caption: string): PictureView {
  const points = (b: readonly number[]) =>
    b.map((value, i) => ({
      a: -0.1 * i,
      b: value,
      standing: i % 2 === 0 ? ("measured" as const) : ("derived" as const),
      colour: { hex: ["#211f1e", "#45484e", "#5c6068", "#73777e", "#a7acb3"][i] ?? "#777777" },
    }));
  return {
    svg: asMarkup(
      tintTrail({
        idPrefix: id,
        title: caption,
        description: caption,
        axes: { a: "a*", b: "b*" },
        ends: { plusA: "red", minusA: "green", plusB: "yellow", minusB: "blue" },
        trails: [
          { label: "titanium white", points: points([0.4, -4.1, -5.2, -5.8, -4]) },
          { label: "lead white", points: points([0.4, 0.6, 1.1, 1.5, 2.4]) },
        ],
      }),
    ),
    caption,
  };
}

export function curve(id: string, caption: string): PictureView {
  const grid = { startNm: 400, stepNm: 10, count: 31 };
  return {
    svg: asMarkup(
      spectralCurve({
        idPrefix: id,
        title: caption,
        description: caption,
        wavelengthLabel: "Wavelength [nm]",
        reflectanceLabel: () => "Reflectance factor",
        curves: [
          {
            label: "masstone",
            colour: { hex: "#211f1e" },
            standing: "measured",
            spectrum: { grid, values: Array.from({ length: 31 }, (_, i) => 0.012 + 0.0003 * i) },
          },
        ],
      }),
    ),
    caption,
  };
}

export function place(id: string, heading: string, caption: string): PictureView {
  return {
    svg: asMarkup(
      placeInRange({
        idPrefix: id,
        title: caption,
        description: caption,
        heading,
        domain: [0, 140],
        own: { value: 92, standing: "stated", text: "92" },
        missing: "not stated",
        range: spreadOf([22, 30, 38, 41, 45, 60, 61, 75, [90, 130], 110, 120]),
        legend: "box: the middle half",
        ends: { low: "least", high: "most" },
      }),
    ),
    caption,
  };
}
