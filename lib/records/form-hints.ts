/** How what a record says is written in the form that its key takes. */
import type { z } from "zod";
import { priceHint } from "./price-slips.ts";
import { slugOf } from "./slug-of.ts";
import type { RecordPath } from "./yaml-record.ts";

type Issue = z.core.$ZodIssue;

/** What a starter leaves to be filled in. */
const OPEN = /^change-me$/i;

/** Blanks that look like any other, as a word processor or a web page has them. */
const OTHER_BLANKS = /[\u00a0\u2000-\u200a\u202f]/;

/** Countries of the European Union by their codes of ISO 3166-1, which is one market. */
const MEMBER_STATES =
  "at be bg cy cz de dk ee es fi fr gr hr hu ie it lt lu lv mt nl pl pt ro se si sk".split(" ");

/** What a closed list calls otherwise. */
const OTHER_NAMES: Readonly<Record<string, string>> = {
  "0/45": "45/0",
  sce: "d/8 excluded",
  sci: "d/8 included",
  uk: "GB",
  ...Object.fromEntries(MEMBER_STATES.map((state) => [state, "EU"])),
  usa: "US",
  english: "en",
  french: "fr",
  german: "de",
  deutsch: "de",
  spanish: "es",
  "%": "percent",
  factors: "factor",
};
const CURRENCY_SIGNS: Readonly<Record<string, string>> = { "£": "GBP", "€": "EUR", $: "USD" };

/** How the same thing is written right, where only its form is wrong; nothing where no one form is meant. */
export function formHint(
  issue: Issue,
  path: RecordPath,
  found: unknown,
  written: string | undefined,
): string | undefined {
  const key = path.at(-1);
  if (typeof found === "string" && OPEN.test(found))
    return "a starter leaves it open: write the right one in its place";
  if (typeof found === "string" && OTHER_BLANKS.test(found))
    return "a blank in it is a no-break space: a plain one in its place";
  if (key === "hazards" && (found === null || found === "none"))
    return "an empty list, [], says that the supplier states none; without the key nothing is known";
  if (key === "temperatureC" && issue.code === "too_big" && typeof found === "number")
    return `${Math.round(((found - 32) * 5) / 9)} C if it was given in degrees Fahrenheit`;
  if (
    (key === "from" || key === "massFraction") &&
    issue.code === "too_big" &&
    typeof found === "number" &&
    found <= 100
  )
    return `${Number((found / 100).toPrecision(6))} if it was given in percent`;
  if (issue.code === "too_big" && issue.origin === "array") return commaHint(found);
  if (issue.code === "invalid_value" && typeof found === "string")
    return otherName(found, issue.values.map(String));
  if (issue.code === "invalid_format") return formatHint(key, issue.format, issue.message, found);
  if (issue.code !== "invalid_type") return undefined;
  if (key === "casNumber" && typeof found === "number") return casOfDigits(String(found));
  if (issue.expected === "string" && typeof found === "number")
    return `in quotes: "${key === "massRatio" ? "1:" : ""}${written ?? String(found)}"`;
  if (issue.expected === "array") return listHint(key, found);
  if (issue.expected === "object") return memberHint(path.at(-2), found);
  if (issue.expected !== "number") return undefined;
  const isPrice = (key === "price" || key === "pricePerKg") && typeof found === "string";
  return numberHint(found) ?? (isPrice ? priceHint(found) : undefined);
}

/** Lists of codes and words, which are written as one text where somebody does not know how a list is. */
const LISTS_OF_WORDS: ReadonlySet<PropertyKey> = new Set([
  "hazards",
  "hazardStatements",
  "precautionaryStatements",
  "supplemental",
  "pictograms",
  "markets",
  "languages",
  "pageLanguages",
]);

/** Lists whose members name a record by this key, and may say more of it. */
const NAMED_BY: Readonly<Record<string, string>> = { pigments: "pigment", additions: "vehicle" };

function memberHint(list: PropertyKey | undefined, found: unknown): string | undefined {
  if (list === "pairs" && typeof found === "string")
    return `each pair stands in brackets of its own: [[${found}, another-colour]]`;
  const key = NAMED_BY[String(list)];
  return key === undefined || typeof found !== "string"
    ? undefined
    : `written so: { ${key}: ${found} }`;
}

function listHint(key: PropertyKey | undefined, found: unknown): string | undefined {
  const member = memberHint(key, found)?.replace(/\{.*\}/, "[$&]");
  if (member !== undefined) return member;
  if (key === undefined || !LISTS_OF_WORDS.has(key) || typeof found !== "string") return undefined;
  const members = found.split(/[,;]\s*|\s+and\s+|(?<!\+)\s+(?!\+)/).filter((one) => one !== "");
  return members.length === 0 ? undefined : `a list stands in brackets: [${members.join(", ")}]`;
}

function otherName(found: string, allowed: readonly string[]): string | undefined {
  const meant = OTHER_NAMES[found.trim().toLowerCase()];
  return meant !== undefined && allowed.includes(meant) ? `nearest: ${meant}` : undefined;
}

function formatHint(
  key: PropertyKey | undefined,
  format: string,
  message: string,
  found: unknown,
): string | undefined {
  if (typeof found !== "string") return undefined;
  if (format === "date") return dateHint(found);
  if (key === "massRatio") return ratioHint(found);
  if (key === "casNumber") return casHint(found);
  if (key === "colourIndexName") return colourIndexHint(found);
  if (/^(?:EU)?H\d{3}/i.test(found) && found !== found.toUpperCase())
    return `written so: ${found.toUpperCase()}`;
  if (key === "currency" && Object.hasOwn(CURRENCY_SIGNS, found.trim()))
    return `nearest: ${CURRENCY_SIGNS[found.trim()] ?? ""}`;
  if (key === "contact" && /^[^\s:@]+@[^\s:@]+$/.test(found)) return `mailto:${found}`;
  if (format === "url" && /^[\w-]+(\.[\w-]+)+(\/|$)/.test(found)) return `https://${found}`;
  const [, quoted] =
    /^[\u2018-\u201f\u00ab\u00bb](.*)[\u2018-\u201f\u00ab\u00bb]$/.exec(found) ?? [];
  if (quoted !== undefined) return `in straight quotes: "${quoted}"`;
  const file = found.includes("/") ? "" : slugOf(found);
  return message.startsWith("lower-case letters") && file !== ""
    ? `${key === "source" ? "its text is a file in sources/, named so" : "its file is named so"}: ${[...new Set([file, slugOf(inGermanLetters(found))])].join(" or ")}`
    : undefined;
}

/** Umlauts as German writes them without: "Leinoel" of "Lein\u00f6l". */
function inGermanLetters(text: string): string {
  return text
    .normalize("NFC")
    .toLowerCase()
    .replace(/[\u00e4\u00f6\u00fc]/g, (umlaut) => `${umlaut.normalize("NFKD").charAt(0)}e`)
    .replaceAll("\u00df", "ss");
}

/** A Colour Index name without its blank, or in small letters: "PG7", "pg 7". */
function colourIndexHint(found: string): string | undefined {
  const [, kind = "", hue = "", number = ""] =
    /^\s*([PN])(BK|BR|B|G|M|O|R|V|W|Y)[\s._-]*(\d+(?::\d+)?)\s*$/i.exec(found) ?? [];
  return number === ""
    ? undefined
    : writtenSo(
        `${kind.toUpperCase()}${hue.slice(0, 1).toUpperCase()}${hue.slice(1).toLowerCase()} ${number}`,
        found,
      );
}

/** Nothing where it is written so already, and something else is wrong. */
function writtenSo(right: string, found: string): string | undefined {
  return right === found ? undefined : `written so: ${right}`;
}

/** A CAS number with other marks between its three parts. */
function casHint(found: string): string | undefined {
  const [, first, second, check] = /^\D*(\d{2,7})\D+(\d{2})\D+(\d)\D*$/.exec(found) ?? [];
  const written = `${first ?? ""}-${second ?? ""}-${check ?? ""}`;
  return first === undefined ? casOfDigits(found) : writtenSo(written, found);
}

/** A CAS number without any marks. */
function casOfDigits(found: string): string | undefined {
  const [, first, second, check] = /^(\d{2,7})(\d{2})(\d)$/.exec(found.trim()) ?? [];
  return first === undefined ? undefined : `written so: ${first}-${second ?? ""}-${check ?? ""}`;
}

/** A ratio with another mark between its sides, a decimal comma, or quotation marks of a letter. */
function ratioHint(found: string): string | undefined {
  const written = found
    .replace(/[\s\u2018-\u201f"']/g, "")
    .replace("/", ":")
    .replaceAll(",", ".");
  return /^\d+(\.\d+)?:\d+(\.\d+)?$/.test(written) ? `written so: "${written}"` : undefined;
}

/** A day that the calendar does not have, or one in another order. */
function dateHint(found: string): string | undefined {
  const [, ofYear = "", second = "", third = ""] =
    /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})$/.exec(found) ?? [];
  if (ofYear !== "")
    return Number(second) > 12 && Number(third) <= 12
      ? `day and month exchanged? ${dayOf(ofYear, third, second)}`
      : /^\d{4}-\d{2}-\d{2}$/.test(found)
        ? "the calendar has no such day"
        : dayOf(ofYear, second, third);
  const [, one = "", mark = "", other = "", year = ""] =
    /^(\d{1,2})([-./])(\d{1,2})\2(\d{4})$/.exec(found) ?? [];
  if (year === "") return undefined;
  const dayFirst = Number(other) <= 12 ? dayOf(year, other, one) : undefined;
  // Between strokes the month stands first in some countries, and second in others.
  const monthFirst = mark === "/" && Number(one) <= 12 ? dayOf(year, one, other) : undefined;
  return dayFirst === monthFirst || monthFirst === undefined || dayFirst === undefined
    ? (dayFirst ?? monthFirst)
    : `${dayFirst} if the day stands first, ${monthFirst} if the month does`;
}

function dayOf(year: string, month: string, day: string): string {
  return `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
}

function numberHint(found: unknown): string | undefined {
  if (typeof found === "string" && /^[+-]?\d+,\d+$/.test(found))
    return `with a decimal point: ${found.replace(",", ".")}`;
  if (typeof found === "string" && /^[+-]?\d+(?:\.\d+)?$/.test(found))
    return `without quotes: ${found}`;
  const [, least, most] =
    typeof found === "string"
      ? (/^(\d+(?:\.\d+)?)\s*[-\u2013]\s*(\d+(?:\.\d+)?)$/.exec(found) ?? [])
      : [];
  if (least !== undefined && most !== undefined) return `a range is { value: [${least}, ${most}] }`;
  const [, number, unit] =
    typeof found === "string" ? (/^(\d+(?:\.\d+)?)\s*([^\d\s,.-].*)$/.exec(found) ?? []) : [];
  if (number !== undefined && unit !== undefined) return `without its unit: ${number}`;
  const isPair =
    Array.isArray(found) && found.length === 2 && found.every((end) => typeof end === "number");
  return isPair ? `a range is { value: [${found.join(", ")}] }` : undefined;
}

/** A list twice as long as it may be, of whole numbers: its decimal commas have become separators. */
function commaHint(found: unknown): string | undefined {
  if (!Array.isArray(found) || found.length % 2 !== 0 || !found.every(Number.isInteger))
    return undefined;
  const meant = Array.from({ length: found.length / 2 }, (_, i) =>
    [found[2 * i], found[2 * i + 1]].join("."),
  );
  return `with decimal points: [${meant.join(", ")}]`;
}
