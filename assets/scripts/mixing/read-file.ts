import type { Geometry } from "../../../lib/optics/fit/measurement.ts";
import type { Spectrum } from "../../../lib/quantities/spectrum.ts";

export interface ReadColumn {
  readonly name: string;
  readonly declaredScale?: "factor" | "percent";
  readonly read: (
    scale: "factor" | "percent",
  ) => { readonly spectrum: Spectrum; readonly geometry?: Geometry } | { readonly fault: string };
}

/** Readings of a file, or what is wrong with it, in a sentence. */
export type ReadFile = { readonly columns: readonly ReadColumn[] } | { readonly fault: string };

type Reader = (name: string, text: string) => ReadFile;

let loading: Promise<Reader> | undefined;

/** The reader, from a script that is loaded once it is wanted. */
export function reader(root: string): Promise<Reader> {
  loading ??= new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = `${root}assets/scripts/reading.js`;
    script.addEventListener("load", () => {
      const { readReadingFile } = globalThis as { readReadingFile?: Reader };
      if (readReadingFile === undefined) reject(new TypeError("The reader did not load"));
      else resolve(readReadingFile);
    });
    script.addEventListener("error", () => reject(new TypeError("The reader did not load")));
    document.head.append(script);
  });
  loading.catch(() => (loading = undefined));
  return loading;
}
