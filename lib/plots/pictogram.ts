import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import {
  PICTOGRAM_DRAWINGS,
  PICTOGRAM_FIELD,
  PICTOGRAM_FRAME,
  PICTOGRAM_RED,
} from "../hazard/label/pictogram-drawings.ts";
import type { Markup } from "../present/views.ts";
import { element, writtenSvg } from "./svg.ts";

const INKS = { symbol: "#000", ground: "#fff" } as const;
const SIZE_PX = 64;

/**
 * A hazard pictogram as SVG, from the drawings that paper carries too. It is
 * hidden from those who read the page aloud: its name stands around it.
 */
export function pictogramSvg(code: PictogramCode): Markup {
  const path = (d: string, fill: string, rule?: "evenodd") =>
    element("path", { d, fill, "fill-rule": rule });
  return writtenSvg(
    element(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        viewBox: "0 0 100 100",
        width: SIZE_PX,
        height: SIZE_PX,
        "aria-hidden": "true",
      },
      [
        path(PICTOGRAM_FIELD, INKS.ground),
        path(PICTOGRAM_FRAME, PICTOGRAM_RED, "evenodd"),
        ...PICTOGRAM_DRAWINGS[code].paths.map(({ ink, d }) => path(d, INKS[ink])),
      ],
    ),
  );
}
