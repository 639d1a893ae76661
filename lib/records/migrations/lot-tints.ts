import { isMap } from "yaml";
import type { Migration, Rewriting } from "./migration.ts";
import { renamedKey, writtenMap, writtenPair } from "./yaml-text.ts";

/** The drawdowns of a lot in a white are called as those of a colour are. */
export const lotTints: Migration = {
  to: 3,
  folder: "lots",
  words: {
    up: "letDowns of a lot is called tints, as those of a colour are",
    down: "tints of a lot is called letDowns",
  },
  up: renamed("letDowns", "tints"),
  down: renamed("tints", "letDowns"),
  examples: [
    {
      of: "a lot beside its standard, with comments",
      older: `number: BB-2410
# Read on the 3rd.
letDowns: # two drawdowns
  - { white: titanium-white, massRatio: "1:20", ratioKind: paint, reading: lots, column: a }
standard:
  masstone: { reading: lots, column: s }
  'letDowns':
    - { white: titanium-white, massRatio: '1:20', ratioKind: paint, reading: lots, column: b }
`,
      newer: `number: BB-2410
# Read on the 3rd.
tints: # two drawdowns
  - { white: titanium-white, massRatio: "1:20", ratioKind: paint, reading: lots, column: a }
standard:
  masstone: { reading: lots, column: s }
  tints:
    - { white: titanium-white, massRatio: '1:20', ratioKind: paint, reading: lots, column: b }
`,
      back: `number: BB-2410
# Read on the 3rd.
letDowns: # two drawdowns
  - { white: titanium-white, massRatio: "1:20", ratioKind: paint, reading: lots, column: a }
standard:
  masstone: { reading: lots, column: s }
  letDowns:
    - { white: titanium-white, massRatio: '1:20', ratioKind: paint, reading: lots, column: b }
`,
    },
    {
      of: "a lot in one line",
      older: '{ number: "1", letDowns: [], note: letDowns }\n',
      newer: '{ number: "1", tints: [], note: letDowns }\n',
    },
    {
      of: "a lot of masstone alone",
      older: "number: B\nnote: letDowns\n",
      newer: "number: B\nnote: letDowns\n",
    },
  ],
};

function renamed(from: string, to: string): Rewriting {
  return (text) => {
    const lot = writtenMap(text);
    if (lot === undefined) return [];
    const standard = writtenPair(lot, "standard")?.value;
    return [
      ...renamedKey(lot, from, to),
      ...(isMap(standard) ? renamedKey(standard, from, to) : []),
    ];
  };
}
