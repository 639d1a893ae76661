import { refusal } from "../plots/svg.ts";
import type { Ink } from "./mark.ts";
import { inkOfProof } from "./proof-inks.ts";
import type { PrintDocument } from "./print-document.ts";

/** Paint in Lab, the rest as grey or sRGB; written as operators, since pdfkit has none for Lab. */
export function setInk({ pdf, proof }: PrintDocument, ink: Ink, use: "fill" | "stroke"): void {
  const fill = use === "fill";
  const inks = proof !== undefined && "lab" in ink ? inkOfProof(proof, ink.lab) : undefined;
  if (inks !== undefined) {
    pdf.addContent(
      `/CSInks ${fill ? "cs" : "CS"} ${inks.cmyk.map(operand).join(" ")} ${fill ? "sc" : "SC"}`,
    );
  } else if ("lab" in ink) {
    const { L, a, b } = ink.lab;
    pdf.addContent(
      `/CSLab ${fill ? "cs" : "CS"} ${[L, a, b].map(operand).join(" ")} ${fill ? "sc" : "SC"}`,
    );
  } else if ("grey" in ink) {
    pdf.addContent(`${operand(ink.grey)} ${fill ? "g" : "G"}`);
  } else {
    pdf.addContent(`${channels(ink.srgb).map(operand).join(" ")} ${fill ? "rg" : "RG"}`);
  }
}

const HEX = /^#[0-9a-f]{6}$/i;

function channels(hex: string): number[] {
  if (!HEX.test(hex)) throw refusal("sRGB colour", hex, "#rrggbb");
  return [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255);
}

function operand(value: number): string {
  return String(Math.round(value * 1e4) / 1e4 + 0);
}
