import type { Markup } from "../present/views.ts";
import { grown, sides, type Box } from "./box.ts";
import { onPanel, panel } from "./picture.ts";
import { swatch, type ScreenColour } from "./screen-colour.ts";
import { element, refusal, writtenSvg, type SvgNode } from "./svg.ts";
import { given } from "../quantities/given.ts";

/**
 * A colour in a grid: masstone above and, where one is given, its tint below, on N 6.
 * @throws RangeError for no colour or more than two.
 */
export function cardSwatch(colours: readonly ScreenColour[], name: string): Markup {
  const [masstone, tint] = colours;
  if (masstone === undefined || colours.length > 2)
    throw refusal("colours of a card", String(colours.length), "1 or 2");
  return writtenSvg(
    element(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        class: "plot plot--card",
        viewBox: "0 0 120 84",
        role: "img",
        "aria-label": name,
      },
      given([
        panel({ left: 0, top: 0, right: 120, bottom: 84 }),
        swatch(masstone, { left: 0, top: 0, right: 120, bottom: tint === undefined ? 84 : 54 }),
        tint !== undefined && swatch(tint, { left: 0, top: 60, right: 120, bottom: 84 }),
      ]),
    ),
  );
}

/** A swatch beside the name in a table's cell, an empty frame where there is no reading: decoration, since the row says it in words. */
export function cellSwatch(colour: ScreenColour | undefined): Markup {
  const box = { left: 6, top: 5, right: 38, bottom: 21 };
  return writtenSvg(
    element(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        class: "plot plot--cell",
        viewBox: "0 0 44 26",
        width: 44,
        height: 26,
        "aria-hidden": "true",
      },
      [
        panel({ left: 0, top: 0, right: 44, bottom: 26 }),
        colour === undefined ? onPanel([emptyFrame(box)]) : swatch(colour, box),
      ],
    ),
  );
}

/** Where a colour would be. */
function emptyFrame(box: Box): SvgNode {
  return element("rect", {
    class: "empty-frame",
    ...sides(grown(box, -0.5)),
    fill: "none",
    stroke: "currentColor",
    "stroke-dasharray": "3 2",
  });
}
