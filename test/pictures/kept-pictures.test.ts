import { expect, test } from "vitest";
import type { PictureToDraw } from "../../lib/pictures/drawn-picture.ts";
import { begunPictures } from "../../lib/pictures/kept-pictures.ts";

/** More than are asked of a thread at a time. */
const COUNT = 100;
const ALL = Array.from({ length: COUNT }, (_, i) => i);
const pictures = ALL.map((i) => ({
  path: `${i}.png`,
  of: i,
  face: () => ({ widthMm: i, heightMm: 1, marks: [] }),
}));

/** A thread that draws some pictures at once, and no other before whoever waits for all has drawn that. */
function idleThread(begins: (i: number) => boolean) {
  const here: number[] = [];
  const beside = ({ face: { widthMm: i } }: PictureToDraw) => {
    let draw = (): void => undefined;
    const result = new Promise<Uint8Array>((drawn) => {
      draw = () => drawn(Uint8Array.of(i));
    });
    if (begins(i)) draw();
    return {
      result,
      here: async () => {
        if (!begins(i)) here.push(i);
        draw();
        return result;
      },
    };
  };
  return { beside, here };
}

test.each([
  ["none", () => false],
  ["every third", (i: number) => i % 3 === 0],
  ["all", () => true],
])(
  "of pictures asked of a thread that begins %s the others are drawn here, each once",
  async (_, begins) => {
    const written = new Map<string, number | undefined>();
    const { beside, here } = idleThread(begins);
    const write = (path: string, bytes: Uint8Array): void => {
      expect(written.has(path)).toBe(false);
      written.set(path, bytes[0]);
    };
    await begunPictures(pictures, "png", undefined, write, beside).done();
    expect(new Map(ALL.map((i) => [`${i}.png`, i]))).toEqual(written);
    expect(here.toSorted((one, other) => one - other)).toEqual(ALL.filter((i) => !begins(i)));
  },
);

test("a thread that breaks off stops whoever waits for its pictures", async () => {
  const beside = () => {
    const result = Promise.reject<Uint8Array>(new Error("The work was broken off"));
    result.catch(() => undefined);
    return { result, here: async () => result };
  };
  const begun = begunPictures(pictures, "png", undefined, () => undefined, beside);
  await expect(begun.done()).rejects.toThrow("The work was broken off");
});
