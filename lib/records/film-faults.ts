import { errorAt, faultAt, warningAt, type Fault, type Faults } from "./fault.ts";
import { filmThicknessFault } from "./film-thickness.ts";
import { levelsOf, mean, type Levels } from "./reading-levels.ts";
import type { FilmReading, ReadColour } from "./records.ts";

/** Two films of one thickness on one ground differ by no more than this [1] in reflectance. Our own limit. */
const FILMS_ALIKE = 0.03;

/**
 * Films and drawdowns over both halves of a chart against what a film can do: over white it is never the darker.
 * @param allRead whether every film and let-down could be read: where one is missing, the rest no longer stands
 *   where the record says.
 */
export function* filmFaults(colour: ReadColour, allRead: boolean): Faults {
  if (allRead) {
    yield* groundFaults(colour);
    yield* loneFilmFaults(colour);
    yield* overBlackFaults(colour);
  }
  yield* thicknessFaults(colour);
}

function* groundFaults({ films, place }: ReadColour): Faults {
  const read = films.flatMap((film, index) => {
    const levels = levelsOf(film.reading);
    return levels === undefined ? [] : [{ film, index, levels }];
  });
  type Read = (typeof read)[number];
  const sameThickness = (one: Read, other: Read): boolean =>
    Math.abs(one.film.filmThicknessUm / other.film.filmThicknessUm - 1) < 0.01 &&
    one.levels.scale === other.levels.scale;
  const pairs = read.flatMap((one, i) =>
    read
      .slice(i + 1)
      .filter((other) => sameThickness(one, other))
      .map((other) => ({ one, other })),
  );
  for (const { one, other } of pairs) {
    if (one.film.ground === other.film.ground) {
      const apart = Math.abs(mean(one.levels.values) - mean(other.levels.values));
      const hasCounterpart = read.some(
        (third) => third.film.ground !== one.film.ground && sameThickness(one, third),
      );
      if (apart > FILMS_ALIKE || !hasCounterpart)
        yield faultAt(
          place(["films", other.index, "ground"]),
          oneGroundFault(other.film, apart > FILMS_ALIKE ? apart : undefined),
        );
      continue;
    }
    const [black, white] = one.film.ground === "black" ? [one, other] : [other, one];
    if (isLighter(black.levels, white.levels))
      yield errorAt(place(["films", black.index]), "records/films-exchanged", {
        message: `The film of ${black.film.filmThicknessUm} um over black is lighter than the one over white, which no paint is`,
        actual: "lighter over black",
        expected: "at least as light over white",
        hint: "the two columns, or the two grounds, are exchanged",
        source: "kubelka-1948",
      });
  }
}

/** A film with none of its thickness on the other ground tells nothing, and is not shown. Of two that a slip parted one is told. */
function* loneFilmFaults({ films, place }: ReadColour): Faults {
  // A thickness in another unit is told by itself, and so are two films on one ground.
  if (films.some(({ filmThicknessUm }) => filmThicknessFault(filmThicknessUm) !== undefined))
    return;
  const lone = films.filter(
    (film) =>
      !films.some((other) => other !== film && other.filmThicknessUm === film.filmThicknessUm),
  );
  for (const { ground, filmThicknessUm } of lone.filter(
    (film) => film.ground === lone[0]?.ground,
  )) {
    const otherGround = ground === "black" ? "white" : "black";
    const others = films.filter((film) => film.ground === otherGround);
    const has = others.map((film) => `${film.filmThicknessUm} um`).join(", ");
    const index = films.findIndex(
      (film) => film.ground === ground && film.filmThicknessUm === filmThicknessUm,
    );
    yield warningAt(place(["films", index, "filmThicknessUm"]), "records/film-alone", {
      message: `The film of ${filmThicknessUm} um over ${ground} has none of its thickness over ${otherGround}, and nothing is worked out from it`,
      actual: has === "" ? `none over ${otherGround}` : has,
      expected: `one of ${filmThicknessUm} um over ${otherGround} too`,
      ...(has !== "" && { hint: `over ${otherGround} there is ${has}` }),
    });
  }
}

/** A masstone or a let-down over both halves of a chart. */
function* overBlackFaults({ masstone, masstoneOverBlack, tints, place }: ReadColour): Faults {
  const pairs = [
    { path: ["masstone"], white: masstone, black: masstoneOverBlack },
    ...tints.map(({ reading, overBlack }, i) => ({
      path: ["tints", i],
      white: reading,
      black: overBlack,
    })),
  ];
  for (const { path, white, black } of pairs) {
    const [over, under] = [levelsOf(black), levelsOf(white)];
    if (over === undefined || under === undefined || over.scale !== under.scale) continue;
    if (isLighter(over, under))
      yield errorAt(place([...path, "overBlack"]), "records/films-exchanged", {
        message: "The drawdown is lighter over black than over white, which no paint is",
        actual: "lighter over black",
        expected: "at least as light over white",
        hint: "the two columns are exchanged: reading is over white",
        source: "kubelka-1948",
      });
  }
}

function isLighter(one: Levels, other: Levels): boolean {
  return mean(one.values) - mean(other.values) > one.least;
}

/** @param apart how far their reflectances lie apart [1], where that is too far for one film. */
function oneGroundFault({ ground, filmThicknessUm }: FilmReading, apart?: number): Fault {
  const otherGround = ground === "black" ? "white" : "black";
  return {
    severity: apart === undefined ? "warning" : "error",
    rule: "records/films-on-one-ground",
    message:
      apart === undefined
        ? `Two films of ${filmThicknessUm} um are both over ${ground}, and none is over ${otherGround}`
        : `Two films of ${filmThicknessUm} um over ${ground} differ by ${apart.toFixed(2)} in reflectance, which one film does not`,
    actual: `two over ${ground}`,
    expected: `one over ${ground} and one over ${otherGround}`,
    hint: `is one of them over ${otherGround}?`,
  };
}

function* thicknessFaults({ record: { films = [] }, place }: ReadColour): Faults {
  for (const [index, { filmThicknessUm }] of films.entries()) {
    const fault = filmThicknessFault(filmThicknessUm);
    if (fault !== undefined) yield faultAt(place(["films", index, "filmThicknessUm"]), fault);
  }
}
