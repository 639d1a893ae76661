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
