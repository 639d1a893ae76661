import type { Migration, Rewriting } from "./migration.ts";

/** The contents in prices.csv have the name that they have in a record and on a label. */
export const priceContents: Migration = {
  to: 4,
  folder: "prices",
  words: {
    up: "the column size of prices.csv is called ml, as in sizes of a colour",
    down: "the column ml of prices.csv is called size",
  },
  up: renamedColumn("size", "ml"),
  down: renamedColumn("ml", "size"),
  examples: [
    {
      of: "a list under a comment, with contents in either form",
      older: "# size: as on the tube\ncolour,size,price\nbone-black,40 ml,9\nbone-black,120,19\n",
      newer: "# size: as on the tube\ncolour,ml,price\nbone-black,40 ml,9\nbone-black,120,19\n",
    },
    {
      of: "a spreadsheet's list",
      older: '\uFEFF"price";"size";"colour"\n9,20;40;"size"\n',
      newer: '\uFEFF"price";"ml";"colour"\n9,20;40;"size"\n',
    },
    {
      of: "a list with capitals",
      older: "Colour\tSize\nb\t40\n",
      newer: "Colour\tml\nb\t40\n",
      back: "Colour\tsize\nb\t40\n",
    },
    { of: "a list without its header", older: "", newer: "" },
  ],
};

/** A column of a CSV's header by another name, whatever parts the cells and stands around them. */
function renamedColumn(from: string, to: string): Rewriting {
  const named = (name: string): RegExp =>
    new RegExp(`(?<=(?:^|[,;\\t])[ "\\uFEFF]*)${name}(?=[ "]*(?:$|[,;\\t]))`, "i");
  return (text) => {
    const header = /^(?!\uFEFF?\s*(?:#|$)).*$/m.exec(text);
    const found = header === null ? null : named(from).exec(header[0]);
    if (header === null || found === null) return [];
    const at = header.index + found.index;
    return named(to).test(header[0])
      ? [
          {
            at,
            refused: `the columns ${from} and ${to} stand side by side, and one of them is meant`,
          },
        ]
      : [{ at, edits: [{ from: at, to: at + from.length, text: to }] }];
  };
}
