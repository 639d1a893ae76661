import { setFlagsFromString } from "node:v8";

/** From so many colours on what is alive is most of what a build takes. Our own choice. */
const LARGE_RANGE = 100;

/**
 * Of a large range the heap is swept before it has grown by a third of what is alive, where `lib/mullstone.js` lets
 * it grow by more: of 150 colours that takes a tenth of the memory, and of the processor's time a twentieth more.
 * Later versions of V8 were not measured.
 */
export function sweptSooner(colourCount: number): void {
  if (colourCount > LARGE_RANGE && process.versions.v8.startsWith("11."))
    setFlagsFromString("--heap-growing-percent=30");
}
