/** A mix, and how it is looked at, as the end of an address: what is shown can be sent. */
import { nearestWord } from "../diagnostics/nearest-word.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { COLOURS_MOST, type Mix, type MixPart } from "./mix.ts";
import { paintName, type MixingRange } from "./mixing-range.ts";
import type { Light, SeenFinish } from "./prediction/seen-mix.ts";

export interface BenchState {
  readonly mix: Mix;
  readonly medium?: { readonly slug: string; readonly volumes: number };
  /** [um]; Infinity for a coat that hides. */
  readonly filmUm: number;
  readonly finish: SeenFinish;
  readonly light: Light;
}

/** What of an address could not be used. */
export type AddressStatement =
  | StatementOf<"no-such-paint", { readonly slug: string; readonly near?: string }>
  | StatementOf<"no-such-parts", { readonly paint: string; readonly parts: string }>
  | StatementOf<"too-many-colours", { readonly most: number }>
  | StatementOf<"no-such-choice", { readonly key: string; readonly value: string }>;

const LIGHTS: readonly Light[] = ["daylight", "incandescent", "led", "fluorescent"];
const PARTS_MOST = 10000;
/** Thinnest and thickest film [um] that is asked for. */
const FILM_UM = [1, 500] as const;
const VOLUMES_MOST = 20;

export function addressOf({ mix, medium, filmUm, finish, light }: BenchState): string {
  const pair = ({ slug, parts }: MixPart): string => `${slug}:${Number(parts.toPrecision(5))}`;
  const given: readonly (readonly [string, string])[] = [
    ["mix", mix.colours.map(pair).join(",")],
    ["white", pair(mix.white)],
    ["by", mix.by],
    ...(medium === undefined
      ? []
      : [["medium", pair({ slug: medium.slug, parts: medium.volumes })] as const]),
    ...(filmUm === Infinity ? [] : [["film", String(filmUm)] as const]),
    ...(finish === "glossy" ? [] : [["finish", finish] as const]),
    ...(light === "daylight" ? [] : [["light", light] as const]),
  ];
  return given.map(([key, value]) => `${key}=${value}`).join("&");
}

/**
 * The state that an address asks for; what it does not say, or says wrongly, is as in `usual`.
 * @param search "mix=bone-black:1&white=titanium-white:20"
 */
export function stateOf(
  search: string,
  range: MixingRange,
  usual: BenchState,
): { readonly state: BenchState; readonly remarks: readonly AddressStatement[] } {
  const asked = new URLSearchParams(search);
  const remarks: AddressStatement[] = [];
  const parts = (text: string): MixPart | undefined => {
    const [slug = "", amount = "1"] = text.split(":");
    const paint = range.paint(slug);
    if (paint === undefined) {
      const near = nearestWord(
        slug,
        range.data.paints.map((one) => one.slug),
      );
      remarks.push({
        rule: "no-such-paint",
        values: { slug, ...(near !== undefined && { near: paintName(near, range) }) },
      });
      return undefined;
    }
    const number = Number(amount);
    if (amount === "" || !(number >= 0 && number <= PARTS_MOST)) {
      remarks.push({ rule: "no-such-parts", values: { paint: paint.name, parts: amount } });
      return { slug, parts: 1 };
    }
    return { slug, parts: number };
  };
  const choice = <T extends string>(key: string, choices: readonly T[], otherwise: T): T => {
    const value = asked.get(key);
    const found = choices.find((one) => one === value);
    if (value !== null && found === undefined)
      remarks.push({ rule: "no-such-choice", values: { key, value } });
    return found ?? otherwise;
  };
  const number = (
    key: string,
    [least, most]: readonly [number, number],
    otherwise: number,
  ): number => {
    const text = asked.get(key);
    if (text === null) return otherwise;
    const value = Number(text);
    if (text !== "" && value >= least && value <= most) return value;
    remarks.push({ rule: "no-such-choice", values: { key, value: text } });
    return otherwise;
  };
  const named = asked.get("mix");
  const listed = [
    ...new Map(
      (named ?? "")
        .split(",")
        .filter((one) => one !== "")
        .map((one) => [one.split(":")[0], one]),
    ).values(),
  ];
  if (listed.length > COLOURS_MOST)
    remarks.push({ rule: "too-many-colours", values: { most: COLOURS_MOST } });
  const colours = listed.slice(0, COLOURS_MOST).flatMap((one) => parts(one) ?? []);
  const whiteText = asked.get("white");
  const white = whiteText === null ? undefined : parts(whiteText);
  const mediumText = asked.get("medium");
  const medium = mediumText === null ? undefined : parts(mediumText);
  return {
    remarks,
    state: {
      mix: {
        by: choice("by", ["volume", "mass"], usual.mix.by),
        colours: named === null || colours.length === 0 ? usual.mix.colours : colours,
        white:
          white ??
          (named === null || colours.length === 0
            ? usual.mix.white
            : whiteFor(colours, range, usual)),
      },
      ...(medium !== undefined && {
        medium: { slug: medium.slug, volumes: Math.min(medium.parts, VOLUMES_MOST) },
      }),
      filmUm: number("film", FILM_UM, usual.filmUm),
      finish: choice("finish", ["glossy", "matte"], usual.finish),
      light: choice("light", LIGHTS, usual.light),
    },
  };
}

/** The usual white where the colours were let down in it, else the first in which all of them were. */
function whiteFor(colours: readonly MixPart[], range: MixingRange, usual: BenchState): MixPart {
  const hold = (white: string): boolean =>
    colours.every(({ slug }) => range.fit(slug)?.whites.some((one) => one.slug === white) === true);
  const found = [usual.mix.white.slug, ...range.whites.map(({ slug }) => slug)].find(hold);
  return { slug: found ?? usual.mix.white.slug, parts: usual.mix.white.parts };
}
