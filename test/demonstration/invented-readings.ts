/**
 * The demonstration's readings. Saltreach Colourworks does not exist, and nobody read its
 * drawdowns: this script makes them, and writes them to content/readings/.
 *
 *     node --import tsx test/demonstration/invented-readings.ts [--out DIR]
 *
 * How they are made: each pigment has an invented absorption and scattering over wavelength
 * (invented-pigments.ts); each paint its pigments and oil (invented-paints.ts); a drawdown
 * mixes them by volume and is worked out layer by layer (layer-reflectance.ts), with the
 * light that a paint film's surface turns back (film-surface.ts). Then comes what a bench
 * adds: scatter of weighing, of film thickness and of the instrument, from a fixed seed
 * (drawdown-reflectance.ts), and one drawdown weighed wrong (invented-sets.ts).
 *
 * What it is for: the product's fits are tried on these readings, so nothing here comes from
 * lib/optics, and the surface constants are others than the product's. White pigment loses
 * some of its scattering to crowding, and blacks are dispersed incompletely, which the
 * two-constant model does not know. The colours are shaped on what such pigments
 * look like; no figure is anybody's measurement.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { drawdownReflectance, groundReflectance } from "./drawdown-reflectance.ts";
import type { PaintKey } from "./invented-paints.ts";
import { columnsOf, INVENTED_SETS, type InventedSet } from "./invented-sets.ts";
import { cgatsText, csvText, cxfText, type ReadingTable } from "./reading-files.ts";

/** Every file of readings: name and text, in order of name. */
export function inventedReadings(): { readonly name: string; readonly text: string }[] {
  const sets = Object.entries(INVENTED_SETS) as [PaintKey, InventedSet][];
  return [...sets.map(([paint, set]) => readingFile(paint, set)), opacityChart()].toSorted(
    (one, other) => (one.name < other.name ? -1 : 1),
  );
}

/** One colour's readings as a table, before they are written in a format. */
export function readingTable(paint: PaintKey, set: InventedSet): ReadingTable {
  const [first, last] = set.span ?? [400, 700];
  const wavelengthsNm = Array.from({ length: (last - first) / 10 + 1 }, (_, i) => first + 10 * i);
  const columns = columnsOf(paint, set).map(({ name, film, drawdown }) => ({
    name,
    values: drawdownReflectance(
      drawdown,
      wavelengthsNm,
      `${paint}, film ${film}`,
      `${paint}, reading ${name}`,
    ),
  }));
  return { wavelengthsNm, columns, geometry: set.geometry ?? "d/8 excluded" };
}

function readingFile(paint: PaintKey, set: InventedSet): { name: string; text: string } {
  const table = readingTable(paint, set);
  switch (set.format ?? "csv") {
    case "csv":
      return { name: `${paint}.csv`, text: csvText(table, "factor") };
    case "csv percent":
      return { name: `${paint}.csv`, text: csvText(table, "percent") };
    case "cgats":
      return { name: `${paint}.txt`, text: cgatsText(table) };
    case "cxf":
      return { name: `${paint}.cxf`, text: cxfText(table) };
  }
}

/** The bare card that films are drawn down on. */
function opacityChart(): { name: string; text: string } {
  const wavelengthsNm = Array.from({ length: 36 }, (_, i) => 380 + 10 * i);
  const geometry = "d/8 excluded";
  const columns = (["black", "white"] as const).map((name) => ({
    name,
    values: groundReflectance(name, geometry, wavelengthsNm),
  }));
  return {
    name: "opacity-chart.csv",
    text: csvText({ wavelengthsNm, columns, geometry }, "factor"),
  };
}

function writeReadings(folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const { name, text } of inventedReadings()) writeFileSync(join(folder, name), text);
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const out = process.argv.indexOf("--out");
  writeReadings(
    out === -1
      ? join(import.meta.dirname, "../../content/readings")
      : (process.argv[out + 1] ?? "."),
  );
}
