import { expect, test } from "vitest";
import { remembered, rememberedOfTwo } from "../../lib/quantities/remembered.ts";

test("is made once of the same thing and equal numbers, again of any other", () => {
  let made = 0;
  const of = remembered((thing: { readonly a: number }, by: number, word: string) => [
    thing.a * by,
    word,
    (made += 1),
  ]);
  const thing = { a: 2 };
  expect(of(thing, 3, "x")).toBe(of(thing, 3, "x"));
  expect(made).toBe(1);
  expect([of(thing, 4, "x"), of(thing, 3, "y"), of({ a: 2 }, 3, "x")]).toEqual([
    [8, "x", 2],
    [6, "y", 3],
    [6, "x", 4],
  ]);
});

test("what came to nothing is not made again", () => {
  let made = 0;
  const of = remembered((thing: { readonly a: number }) => void (made += thing.a));
  const thing = { a: 1 };
  of(thing);
  of(thing);
  expect(made).toBe(1);
});

test("of two things it goes by both, in their order", () => {
  let made = 0;
  const of = rememberedOfTwo((one: { n: number }, other: { n: number }) => [
    one.n - other.n,
    (made += 1),
  ]);
  const [one, other] = [{ n: 3 }, { n: 1 }];
  expect([of(one, other), of(other, one), of(one, other)]).toEqual([
    [2, 1],
    [-2, 2],
    [2, 1],
  ]);
});
