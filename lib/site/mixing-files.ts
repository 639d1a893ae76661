/** What the pages that mix are sent beside their script: the paints, and the tables of notations. As scripts and not as JSON: a page opened from a folder may load the one and not the other. */
import { keptBesideProgram } from "../kept/beside-program.ts";
import { labOfMunsell } from "../colorimetry/munsell-inversion.ts";
import { renotationTable } from "../mixing/notation/renotation-table.ts";
import { sentReach } from "../mixing/reach/sent-reach.ts";
import { hasMixing } from "../pages/mixing-data.ts";
import { mixingOf, offeredOf, reachesOf } from "../pages/mixing-ways.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { MixingPaint } from "../mixing/mixing-paint.ts";
import type { DataFile } from "./site.ts";
import { given } from "../quantities/given.ts";

/** The paints that are offered, and the tables: what these pages load beside their scripts. */
export function mixingFiles(context: PageContext): DataFile[] {
  if (!hasMixing(context)) return [];
  const reaches = reachesOf(context);
  const offered = offeredOf(context);
  return given([
    reaches.length > 0 && {
      path: "assets/scripts/mixing-reach.js",
      text: assigned("mixingReaches", reaches.map(sentReach)),
    },
    {
      path: "assets/scripts/mixing-paints.js",
      text: assigned("mixingPaints", offered.data),
    },
    {
      path: "assets/scripts/mixing-notations.js",
      text: assigned("colourNotations", {
        renotation: keptBesideProgram("renotation", [], renotation),
        blocks: context.records.knowledge.tables.isccNbsBlocks.map(
          ({ hueFrom, hueTo, valueFrom, valueTo, chromaFrom, chromaTo, number, name }) => [
            hueFrom,
            hueTo,
            valueFrom,
            Math.min(valueTo, OPEN_END),
            chromaFrom,
            Math.min(chromaTo, OPEN_END),
            number,
            name,
          ],
        ),
      }),
    },
  ]);
}

/** Each paint that is not among those offered, for a page that is asked for it. */
export function otherPaintFiles(context: PageContext): DataFile[] {
  if (!hasMixing(context)) return [];
  const offered = offeredOf(context);
  return mixingOf(context).data.paints.flatMap((paint) =>
    offered.paint(paint.slug) === undefined
      ? [{ path: `colours/${paint.slug}/mixing.js`, text: added(paint) }]
      : [],
  );
}

/** JSON has no infinity. */
const OPEN_END = 1e6;

function renotation() {
  return renotationTable((hueNumber, value, chroma) => {
    const { a, b } = labOfMunsell({ hueNumber, value, chroma });
    return {
      C: Math.hypot(a, b),
      h: ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360,
    };
  });
}

/** `<` is escaped, so that no name can end a script that somebody sets into a page. */
function assigned(name: string, value: unknown): string {
  return `globalThis.${name}=${escaped(value)};\n`;
}

function added(paint: MixingPaint): string {
  return `(globalThis.mixingOthers??=[]).push(${escaped(paint)});\n`;
}

function escaped(value: unknown): string {
  return JSON.stringify(value).replaceAll("<", "\\u003c");
}
