import { isMap, isScalar, isSeq, type YAMLMap } from "yaml";
import type { Change, Migration } from "./migration.ts";
import { lineBreak, lineEnd, lineStart, nextLine, type TextEdit } from "./text-edit.ts";
import { writtenMap, writtenPair, writtenPairs, type WrittenPair } from "./yaml-text.ts";

/** The metal of a drier stands in the list that labels and studio cautions are worked out of, too. */
export const drierMetals: Migration = {
  to: 2,
  folder: "vehicles",
  words: {
    up: "metal and metalPercent of a drier are an entry of its metals",
    down: "the one entry of a drier's metals is its metal and metalPercent",
  },
  up: (text) => upward(text, writtenMap(text)),
  down: (text) => downward(text, writtenMap(text)),
  examples: [
    {
      of: "a drier with comments",
      older: `name: Drier
kind: drier
metal: cobalt # as its paper has it
# From the can.
metalPercent: 4.0 # by mass
hazards: []
`,
      newer: `name: Drier
kind: drier
metals:
  - metal: cobalt # as its paper has it
    # From the can.
    percent: 4.0 # by mass
hazards: []
`,
    },
    {
      of: "figure and metal apart, the last line without its end",
      older: 'kind: drier\n"metalPercent": 8 # sold so\nname: Drier\nmetal: "zinc"',
      newer: 'kind: drier\nname: Drier\nmetals:\n  - metal: "zinc"\n    percent: 8 # sold so',
      back: 'kind: drier\nname: Drier\nmetal: "zinc"\nmetalPercent: 8 # sold so',
    },
    {
      of: "a metal whose share nobody knows",
      older: "kind: drier\nmetal: lead\ndate: 2026-02-03\n",
      newer: "kind: drier\nmetals:\n  - metal: lead\ndate: 2026-02-03\n",
    },
    {
      of: "a drier in one line",
      older: "{ kind: drier, metalPercent: 4, name: Drier, metal: cobalt }\n",
      newer: "{ kind: drier, name: Drier, metals: [{ metal: cobalt, percent: 4 }] }\n",
      back: "{ kind: drier, name: Drier, metal: cobalt, metalPercent: 4 }\n",
    },
    {
      of: "a list in one line",
      older: "kind: drier\nmetal: cobalt\nmetalPercent: 4\n",
      newer: "kind: drier\nmetals:\n  - metal: cobalt\n    percent: 4\n",
    },
    {
      of: "a drier of two metals, which both versions write alike",
      older: "metals: [{ metal: cobalt, percent: 4 }, { metal: zirconium, percent: 10 }]\n",
      newer: "metals: [{ metal: cobalt, percent: 4 }, { metal: zirconium, percent: 10 }]\n",
    },
  ],
};

/** What the older form could name by `metal`. */
const OLDER_METALS: readonly unknown[] = [
  "cobalt",
  "manganese",
  "lead",
  "zirconium",
  "calcium",
  "zinc",
];

function upward(text: string, map: YAMLMap | undefined): Change[] {
  const [metal, percent] = ["metal", "metalPercent"].map((key) => map && writtenPair(map, key));
  const at = (metal ?? percent)?.from;
  if (map === undefined || at === undefined) return [];
  if (metal === undefined)
    return [{ at, refused: "metalPercent stands without the metal that it is of" }];
  if (writtenPair(map, "metals") !== undefined)
    return [{ at, refused: "metal stands beside a list of metals, and one of them is meant" }];
  return [
    {
      at,
      edits:
        map.flow === true
          ? inBraces(text, map, metal, percent)
          : inLines(text, map, metal, percent),
    },
  ];
}

function inBraces(
  text: string,
  map: YAMLMap,
  metal: WrittenPair,
  percent: WrittenPair | undefined,
): TextEdit[] {
  const share = percent === undefined ? "" : `, percent: ${valueText(text, percent)}`;
  return [
    {
      from: metal.from,
      to: metal.to,
      text: `metals: [{ metal: ${valueText(text, metal)}${share} }]`,
    },
    ...(percent === undefined ? [] : [withoutPair(map, percent)]),
  ];
}

/** A pair of braces taken out, with the comma that parts it from the next, or of the last from the one before. */
function withoutPair(map: YAMLMap, pair: WrittenPair): TextEdit {
  const pairs = writtenPairs(map);
  const i = pairs.findIndex(({ from }) => from === pair.from);
  const [before, after] = [pairs[i - 1], pairs[i + 1]];
  return after === undefined
    ? { from: before?.to ?? pair.from, to: pair.to, text: "" }
    : { from: pair.from, to: after.from, text: "" };
}

function inLines(
  text: string,
  map: YAMLMap,
  metal: WrittenPair,
  percent: WrittenPair | undefined,
): TextEdit[] {
  const eol = lineBreak(text);
  const indent = text.slice(lineStart(text, metal.from), metal.from);
  const head = { from: metal.from, to: metal.from, text: `metals:${eol}${indent}  - ` };
  if (percent === undefined) return [head];
  const pairs = writtenPairs(map);
  const isNext =
    pairs[pairs.findIndex(({ from }) => from === metal.from) + 1]?.from === percent.from;
  const renamed = {
    from: percent.from,
    to: percent.key.range?.[1] ?? percent.from,
    text: "percent",
  };
  if (isNext) return [head, ...shifted(text, nextLine(text, metal.from), percent.to), renamed];
  const [from, end] = [lineStart(text, percent.from), lineEnd(text, percent.to)];
  const line = `${indent}    percent${text.slice(renamed.to, end)}`;
  const place = lineEnd(text, metal.to);
  return [
    head,
    { from, to: nextLine(text, end), text: "" },
    { from: place, to: place, text: `${eol}${line}` },
  ];
}

/** Lines from one place to another, farther in by what a list takes; empty ones stay empty. */
function shifted(text: string, from: number, to: number): TextEdit[] {
  const edits: TextEdit[] = [];
  for (let at = from; at < to; at = nextLine(text, at))
    if (lineEnd(text, at) > at) edits.push({ from: at, to: at, text: "    " });
  return edits;
}

function downward(text: string, map: YAMLMap | undefined): Change[] {
  const metals = map && writtenPair(map, "metals");
  if (map === undefined || metals === undefined || !isSeq(metals.value)) return [];
  const [only, ...more] = metals.value.items;
  const metal = isMap(only) ? writtenPair(only, "metal") : undefined;
  const percent = isMap(only) ? writtenPair(only, "percent") : undefined;
  if (more.length > 0 || metal === undefined || !isOlder(metal)) {
    const unknown = metals.value.items.find(
      (item) => isMap(item) && writtenPair(item, "percent") === undefined,
    );
    // Both versions have the list; the older one wants a share of each.
    return unknown === undefined
      ? []
      : [
          {
            at: metals.from,
            refused: "a metal of the list has no percent, and the older form wants one",
          },
        ];
  }
  const spread = metals.value.flow === true || (isMap(only) && only.flow === true);
  const isWritten = /^["']?metals["']?:\s*-[ \t]+$/.test(text.slice(metals.from, metal.from));
  if (!spread && isWritten && (percent === undefined || percent.from > metal.from))
    return [{ at: metals.from, edits: outOfList(text, metals, metal, percent) }];
  if (text.slice(metals.from, metals.to).includes("#"))
    return percent === undefined
      ? [{ at: metals.from, refused: "a comment stands in the list and would be lost" }]
      : [];
  const [eol, indent] =
    map.flow === true
      ? [", ", ""]
      : [lineBreak(text), text.slice(lineStart(text, metals.from), metals.from)];
  const share =
    percent === undefined ? "" : `${eol}${indent}metalPercent: ${valueText(text, percent)}`;
  return [
    {
      at: metals.from,
      edits: [
        { from: metals.from, to: metals.to, text: `metal: ${valueText(text, metal)}${share}` },
      ],
    },
  ];
}

function isOlder({ value }: WrittenPair): boolean {
  return isScalar(value) && OLDER_METALS.includes(value.value);
}

function outOfList(
  text: string,
  metals: WrittenPair,
  metal: WrittenPair,
  percent: WrittenPair | undefined,
): TextEdit[] {
  const columns =
    metal.from - lineStart(text, metal.from) - (metals.from - lineStart(text, metals.from));
  const edits: TextEdit[] = [{ from: metals.from, to: metal.from, text: "" }];
  const end = (percent ?? metal).to;
  for (let at = nextLine(text, metal.from); at < end; at = nextLine(text, at)) {
    const blanks = /^ */.exec(text.slice(at, lineEnd(text, at)))?.[0].length ?? 0;
    edits.push({ from: at, to: at + Math.min(columns, blanks), text: "" });
  }
  if (percent !== undefined)
    edits.push({
      from: percent.from,
      to: percent.key.range?.[1] ?? percent.from,
      text: "metalPercent",
    });
  return edits;
}

function valueText(text: string, { value }: WrittenPair): string {
  return value?.range ? text.slice(value.range[0], value.range[1]) : "";
}
