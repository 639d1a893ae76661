/** Reads an instrument's file in the browser by the readers that records go through; fetched only when a file is chosen. */
import { parseReadingFile } from "../../lib/records/readings/reading-file.ts";
import { spectrumFromColumn } from "../../lib/records/readings/spectrum-from-column.ts";
import { GEOMETRIES } from "../../lib/records/schema/terms.ts";
import type { Diagnostic } from "../../lib/diagnostics/diagnostic.ts";
import type { ReadFile } from "./mixing/read-file.ts";

function readFile(name: string, text: string): ReadFile {
  const { reading, diagnostics } = parseReadingFile(name, text);
  if (reading === undefined) return { fault: sentence(diagnostics) };
  return {
    columns: [...reading.columns.values()].map((column) => ({
      name: column.name,
      ...(column.declaredScale === undefined ? {} : { declaredScale: column.declaredScale }),
      read: (scale) => {
        const geometry = GEOMETRIES.find((known) => known === column.geometry);
        const { spectrum, diagnostics: faults } = spectrumFromColumn(
          column,
          scale,
          undefined,
          name,
        );
        return spectrum === undefined
          ? { fault: sentence(faults) }
          : { spectrum, ...(geometry === undefined ? {} : { geometry }) };
      },
    })),
  };
}

/** The first fault, as a sentence for who holds the file. */
function sentence(diagnostics: readonly Diagnostic[]): string {
  const first = diagnostics.find(({ severity }) => severity === "error") ?? diagnostics[0];
  return first === undefined
    ? ""
    : `${first.message}${first.hint === undefined ? "" : ` (${first.hint})`}.`;
}

(globalThis as { readReadingFile?: typeof readFile }).readReadingFile = readFile;
