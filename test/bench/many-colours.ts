import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { eanCheckDigit } from "../../lib/records/ean.ts";

const DEMONSTRATION = join(import.meta.dirname, "../../content");

/** Colours of one paint that were read: each can be had again under another name with other readings. */
interface Model {
  readonly slug: string;
  readonly text: string;
  readonly csv: string;
}

/**
 * A content folder of so many colours: the demonstration's, then further ones modelled on these,
 * each with masstone, let-downs and films of its own, no two read alike, and with sizes, prices and
 * numbers of its own, so that it has a shelf card.
 */
export function writeManyColours(content: string, count: number): void {
  cpSync(DEMONSTRATION, content, { recursive: true });
  const colours = join(content, "colours");
  const own = readdirSync(colours).length;
  const models = modelsIn(content);
  const prices = join(content, "prices.csv");
  const listed = readFileSync(prices, "utf8").trimEnd().split("\n");
  const further: string[] = [];
  for (let i = 0; own + i < count; i++) {
    const { slug, text, csv } = models[i % models.length] ?? { slug: "", text: "", csv: "" };
    const turn = Math.floor(i / models.length) + 2;
    const name = `${slug}-${turn}`;
    mkdirSync(join(content, "readings"), { recursive: true });
    writeFileSync(join(content, "readings", `${name}.csv`), readOtherwise(csv, i + 1));
    writeFileSync(
      join(colours, `${name}.md`),
      text
        .replace(/^(name: .*)$/m, `$1 ${turn}`)
        .replaceAll(`reading: ${slug}.csv`, `reading: ${name}.csv`)
        .replace(/^(?:lot|standard): .*\n/gm, ""),
    );
    for (const row of listed.filter((one) => one.startsWith(`${slug},`)))
      further.push(pricedAs(name, row, own + further.length));
  }
  writeFileSync(prices, `${[...listed, ...further].join("\n")}\n`);
}

/** The row of a price list for another colour, with a number of its own out of those that shops give out themselves. */
function pricedAs(slug: string, row: string, nth: number): string {
  const [, ml = "", price = "", code = ""] = row.split(",");
  const digits = `21${String(nth).padStart(10, "0")}`;
  return [slug, ml, price, code, `${digits}${eanCheckDigit(digits)}`].join(",");
}

function modelsIn(content: string): Model[] {
  return readdirSync(join(content, "colours"))
    .sort()
    .flatMap((file): Model[] => {
      const slug = file.replace(".md", "");
      const text = readFileSync(join(content, "colours", file), "utf8");
      if (!text.includes(`reading: ${slug}.csv`) || !/^tints:/m.test(text)) return [];
      return [{ slug, text, csv: readFileSync(join(content, "readings", `${slug}.csv`), "utf8") }];
    });
}

/** Every reflectance bent a little: between a twentieth less and a twentieth more, by wavelength, otherwise for each colour. */
function readOtherwise(csv: string, nth: number): string {
  const [scale, tilt] = [0.96 + 0.04 * ((nth * 0.618034) % 1), 0.02 * ((nth * 0.414214) % 1)];
  return csv.replace(/^(\d+)((?:,[\d.]+)+)$/gm, (_, nm: string, values: string) => {
    const factor = scale + tilt * ((Number(nm) - 550) / 150);
    const bent = values
      .slice(1)
      .split(",")
      .map((value) => (Number(value) * factor).toFixed(value.split(".")[1]?.length ?? 0));
    return `${nm},${bent.join(",")}`;
  });
}
