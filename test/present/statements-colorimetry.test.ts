import { labUnder } from "../../lib/colorimetry/lab-under.ts";
import { lamplight } from "../../lib/colorimetry/lamplight.ts";
import { metamerism } from "../../lib/colorimetry/metamerism.ts";
import { munsellOfLab } from "../../lib/colorimetry/munsell.ts";
import type { ColorimetryStatement } from "../../lib/colorimetry/statements.ts";
import { COLORIMETRY_RULINGS } from "../../lib/words/rulings/colorimetry.ts";
import { wavelengthsNm, type Spectrum } from "../../lib/quantities/spectrum.ts";
import { holdSentences, type Stated } from "./statements-held.ts";

const GRID = { startNm: 400, stepNm: 10, count: 31 };
const reading = (R: (nm: number) => number): Spectrum => ({
  grid: GRID,
  values: wavelengthsNm(GRID).map(R),
});
const edge = (low: number, high: number) =>
  reading((nm) => low + (high - low) / (1 + Math.exp((580 - nm) / 15)));
const GREY = reading(() => 0.3);
const rippled = (amplitude: number) =>
  reading((nm) => 0.3 + amplitude * Math.sin((2 * Math.PI * nm) / 150));

const statements: Stated<ColorimetryStatement>[] = [
  ...[edge(0.2, 0.2), edge(0.2, 0.34), edge(0.05, 0.6)].map(
    (spectrum) => lamplight(spectrum).statement,
  ),
  ...[rippled(0.002), rippled(0.03), edge(0.05, 0.6)].map(
    (other) => metamerism(GREY, other).statement,
  ),
  labUnder({ L: 5, a: -90, b: 60 }, "D65/10", "C/2"),
  labUnder({ L: 50, a: 10, b: 10 }, "D65/10", "A/10"),
  munsellOfLab({ L: 100.4, a: 0, b: 0 }),
  munsellOfLab({ L: 2, a: 96, b: -90 }),
].filter((found) => "rule" in found);

holdSentences("sentences of colorimetry", COLORIMETRY_RULINGS, statements);
