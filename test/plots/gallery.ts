/** Writes the example pictures as one page, to be looked at: `npx tsx test/plots/gallery.ts FILE [light|dark] [NAME ...]`. */
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { EXAMPLE_PICTURES } from "./example-pictures.ts";

const [file = "gallery.html", theme = "light", ...only] = process.argv.slice(2);
const font = (weight: number): string =>
  pathToFileURL(
    `node_modules/@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`,
  ).href;
const css = readFileSync("test/plots/plots.css", "utf8");
const ground =
  theme === "dark" ? "background: #1b1b1b; color: #e6e6e6" : "background: #fafafa; color: #1b1b1b";
const pictures = Object.entries(EXAMPLE_PICTURES).filter(
  ([name]) => only.length === 0 || only.includes(name),
);
writeFileSync(
  file,
  `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Pictures</title><style>
@font-face { font-family: "Source Sans 3"; font-weight: 400; src: url("${font(400)}"); }
@font-face { font-family: "Source Sans 3"; font-weight: 600; src: url("${font(600)}"); }
body { ${ground}; margin: 16px; font-family: serif; } figure { margin: 0 0 24px; }
@media (min-width: 40em) { main { columns: 2; } figure { break-inside: avoid; } }
${css}</style><main>${pictures.map(([, svg]) => `<figure>${svg}</figure>`).join("")}</main></html>`,
);
