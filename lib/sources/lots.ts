import { read, recalled, type Bibliography } from "./source.ts";

/** Texts that the judgement of lots rests on. */
export const LOT_SOURCES = {
  "iso-787-24": recalled(
    "ISO 787-24. General methods of test for pigments and extenders. Part 24: Determination of relative tinting strength of coloured pigments and relative scattering power of white pigments. Photometric methods.",
    "That strength is a ratio of K/S of equal let-downs in white; the text was not at hand, and its dispersion is not ours.",
  ),
  "astm-d387": recalled(
    "ASTM D387. Standard Test Method for Color and Strength of Chromatic Pigments with a Mechanical Muller. ASTM International.",
    "Masstone and one let-down of lot and standard side by side; the text was not at hand.",
  ),
  "iso-18314-2": recalled(
    "ISO 18314-2:2023. Analytical colorimetry. Part 2: Saunderson correction, solutions of the Kubelka-Munk equation, tinting strength, depth of shade and hiding power.",
    "Scope read: strength and the residual difference by several criteria, of which two are used here. Its equations were not at hand.",
  ),
  "iso-14253-1": recalled(
    "ISO 14253-1. Geometrical product specifications. Inspection by measurement of workpieces and measuring equipment. Part 1: Decision rules for verifying conformity or nonconformity with specifications.",
    "A figure conforms, or does not, only when that holds over its whole uncertainty.",
  ),
  "nist-handbook": recalled(
    "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2 What are variables control charts, 6.3.2.2 Individuals control charts.",
    "Limits of individuals from the moving range, runs of eight and trends of six.",
    "NIST/SEMATECH handbook",
  ),
  "montgomery-runger": read(
    "Montgomery, D. C. & Runger, G. C. Applied Statistics and Probability for Engineers, 15-4 Control charts for individual measurements.",
    "A worked exercise with its limits, in a public copy.",
    "Montgomery & Runger",
  ),
} as const satisfies Bibliography;
