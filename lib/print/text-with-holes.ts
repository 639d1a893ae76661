import { AsWritten, HOLE, type Leaves } from "./leaves.ts";

/** What stands in a hole, and which one of these. */
export type InHole = readonly [kind: number, which: number];

/** Between two letters that no text of PDF has. */
const MARK = /\ue000(\d+):(\d+)\ue001/;
const BEGINS = /^(\d+) 0 obj$/;

/** A hole in what pdfkit makes text of. */
export class Hole extends AsWritten {
  constructor([kind, which]: InHole, after = "") {
    super(`\ue000${kind}:${which}\ue001${after}`);
  }
}

/** What pdfkit writes, in place of being sent to a reader. */
export interface TextWithHoles {
  readonly write: (data: string | Uint8Array) => void;
  /** The numbers that pdfkit gave the objects which began here. */
  readonly begun: () => readonly number[];
  /** All of it. @param standing what stands in a hole that was written as something else. */
  readonly written: (standing: (written: InHole) => InHole) => Pick<Leaves, "bytes" | "holes">;
}

export function textWithHoles(): TextWithHoles {
  const parts: Uint8Array[] = [];
  const holes: { readonly at: number; readonly written: InHole }[] = [];
  let length = 0;
  const add = (bytes: Uint8Array): void => {
    parts.push(bytes);
    length += bytes.length;
  };
  return {
    write: (data) => {
      if (typeof data !== "string") return add(data);
      const whole = `${data.replace(BEGINS, (_, id: string) => `${new Hole([HOLE.begins, Number(id)]).toString()} 0 obj`)}\n`;
      const [text = "", ...rest] = whole.split(MARK);
      add(Buffer.from(text, "latin1"));
      for (let i = 0; i < rest.length; i += 3) {
        holes.push({ at: length, written: [Number(rest[i]), Number(rest[i + 1])] });
        add(Buffer.from(rest[i + 2] ?? "", "latin1"));
      }
    },
    begun: () =>
      holes.flatMap(({ written: [kind, which] }) => (kind === HOLE.begins ? [which] : [])),
    written: (standing) => ({
      bytes: Buffer.concat(parts),
      holes: Uint32Array.from(holes.flatMap(({ at, written }) => [at, ...standing(written)])),
    }),
  };
}
