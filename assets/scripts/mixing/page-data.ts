/** The paints and notations that a page which mixes is sent as scripts beside its own. */
import { isccNbsNames, isccNbsText, type IsccNbsBlock } from "../../../lib/colorimetry/iscc-nbs.ts";
import { munsellOfLab, type Munsell } from "../../../lib/colorimetry/munsell.ts";
import { spectrumLab } from "../../../lib/colorimetry/spectrum-lab.ts";
import type { Lab } from "../../../lib/colorimetry/viewing.ts";
import { mixingRange, type MixingRange } from "../../../lib/mixing/mixing-range.ts";
import type { MixingPaint } from "../../../lib/mixing/mixing-paint.ts";
import { useRenotation } from "../../../lib/mixing/notation/compact-munsell.ts";
import type { RenotationTable } from "../../../lib/mixing/notation/renotation-table.ts";
import { axisUncertainty } from "../../../lib/optics/fit/prediction-uncertainty.ts";
import { isStatement } from "../../../lib/quantities/statement.ts";
import type { Spectrum } from "../../../lib/quantities/spectrum.ts";
import { MIXING_PAGES as TEXT } from "../../../lib/words/in-browser/mixing.ts";
import { sentRange } from "./sent-range.ts";

interface Sent {
  readonly mixingOthers?: readonly MixingPaint[];
  readonly colourNotations?: {
    readonly renotation: RenotationTable;
    readonly blocks: readonly (readonly [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      string,
    ])[];
  };
}

/** Bring the part of a page that a script makes to life; where the range has not come, what stands in its place says why. */
export function withRange(
  selector: string,
  start: (at: HTMLElement, range: MixingRange) => void,
): void {
  const root = document.querySelector<HTMLElement>(selector);
  const without = document.querySelector("[data-without]");
  const range = sentRange();
  if (typeof range === "string") {
    if (without !== null) without.textContent = TEXT[range];
  } else if (root !== null) {
    const begin = (all: MixingRange): void => {
      without?.remove();
      root.hidden = false;
      start(root, all);
    };
    const asked = range.data.hasOthers === true ? askedOthers(range) : [];
    if (asked.length === 0) begin(range);
    else void withOthers(asked, range, root).then(begin);
  }
}

/** Paints that the address names and that were not sent with the page, by slug. */
function askedOthers(range: MixingRange): string[] {
  const slugs = [...new URLSearchParams(location.search).values()]
    .flatMap((value) => value.match(/[a-z0-9]+(?:-[a-z0-9]+)*/g) ?? [])
    .filter((slug) => /[a-z]/.test(slug) && range.paint(slug) === undefined);
  return [...new Set(slugs)].slice(0, OTHERS_MOST);
}
const OTHERS_MOST = 8;

/** The range with paints that have files of their own, each of them a choice where its kind is chosen. */
async function withOthers(
  slugs: readonly string[],
  range: MixingRange,
  root: HTMLElement,
): Promise<MixingRange> {
  const sent = document.querySelector<HTMLScriptElement>('script[src*="mixing-paints"]')?.src;
  await Promise.all(
    slugs.map((slug) => fetched(new URL(`../../colours/${slug}/mixing.js`, sent).href)),
  );
  const others = (globalThis as Sent).mixingOthers ?? [];
  for (const select of root.querySelectorAll("select")) {
    const kinds = new Set([...select.options].map(({ value }) => range.paint(value)?.kind));
    for (const { slug, name, kind } of others)
      if (kinds.has(kind)) select.add(new Option(name, slug));
  }
  return mixingRange({ ...range.data, paints: [...range.data.paints, ...others] });
}

/** What is not there is no paint of the range: the page says so itself. */
async function fetched(address: string): Promise<void> {
  await new Promise<void>((resolve) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => resolve());
    document.head.append(script);
  });
}

export interface Notations {
  readonly munsell?: Munsell;
  /** ISCC-NBS. */
  readonly name?: string;
}

/** Munsell notation and name of a spectrum; nothing while their tables have not come. */
export function notationsOf(spectrum: Spectrum, lab: Lab, p68: number): Notations {
  const blocks = sentBlocks();
  if (blocks === undefined) return {};
  const found = munsellOfLab(spectrumLab(spectrum, "C/2"), axisUncertainty(p68, lab));
  if (isStatement(found)) return {};
  const name = isccNbsText(isccNbsNames(found, blocks, found.uncertainty));
  return { munsell: found, ...(name === "" ? {} : { name }) };
}

/** Make Munsell notations readable, where their tables have come. */
export function readyNotations(): boolean {
  return sentBlocks() !== undefined;
}

let known: readonly IsccNbsBlock[] | undefined;

function sentBlocks(): readonly IsccNbsBlock[] | undefined {
  const { colourNotations } = globalThis as Sent;
  if (known !== undefined || colourNotations === undefined) return known;
  useRenotation(colourNotations.renotation);
  known = colourNotations.blocks.map(
    ([hueFrom, hueTo, valueFrom, valueTo, chromaFrom, chromaTo, number, name]) => ({
      hueFrom,
      hueTo,
      valueFrom,
      valueTo,
      chromaFrom,
      chromaTo,
      number,
      name,
    }),
  );
  return known;
}
