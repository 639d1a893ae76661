import type { Bibliography } from "./source.ts";

/** Texts that the judgement of lots rests on. */
export const LOT_SOURCES = {
  "iso-787-24": {
    citation:
      "ISO 787-24. General methods of test for pigments and extenders. Part 24: Determination of relative tinting strength of coloured pigments and relative scattering power of white pigments. Photometric methods.",
    standing: "memory",
    note: "That strength is a ratio of K/S of equal let-downs in white; the text was not at hand, and its dispersion is not ours.",
  },
  "astm-d387": {
    citation:
      "ASTM D387. Standard Test Method for Color and Strength of Chromatic Pigments with a Mechanical Muller. ASTM International.",
    standing: "memory",
    note: "Masstone and one let-down of lot and standard side by side; the text was not at hand.",
  },
  "iso-18314-2": {
    citation:
      "ISO 18314-2:2023. Analytical colorimetry. Part 2: Saunderson correction, solutions of the Kubelka-Munk equation, tinting strength, depth of shade and hiding power.",
    standing: "memory",
    note: "Scope read: strength and the residual difference by several criteria, of which two are used here. Its equations were not at hand.",
  },
  "iso-14253-1": {
    citation:
      "ISO 14253-1. Geometrical product specifications. Inspection by measurement of workpieces and measuring equipment. Part 1: Decision rules for verifying conformity or nonconformity with specifications.",
    standing: "memory",
    note: "A figure conforms, or does not, only when that holds over its whole uncertainty.",
  },
  "nist-handbook": {
    citation:
      "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2 What are variables control charts, 6.3.2.2 Individuals control charts.",
    short: "NIST/SEMATECH handbook",
    standing: "memory",
    note: "Limits of individuals from the moving range, runs of eight and trends of six.",
  },
  "montgomery-runger": {
    citation:
      "Montgomery, D. C. & Runger, G. C. Applied Statistics and Probability for Engineers, 15-4 Control charts for individual measurements.",
    short: "Montgomery & Runger",
    standing: "read",
    note: "A worked exercise with its limits, in a public copy.",
  },
} as const satisfies Bibliography;
