/**
 * Colours and a white mixed under the reader's hand. The address holds the mixture (`?mix=bone-black:1&white=...`), so
 * that it can be sent; the models are those of the sheets, and what they cannot predict is said with its reason.
 */
import { mixOpacity } from "../../lib/mixing/prediction/mix-opacity.ts";
import { addressOf, stateOf, type BenchState } from "../../lib/mixing/mix-address.ts";
import { partsOf, type Mix, type MixPart } from "../../lib/mixing/mix.ts";
import type { MixingPaint } from "../../lib/mixing/mixing-paint.ts";
import type { MixingRange } from "../../lib/mixing/mixing-range.ts";
import { mixFacts } from "../../lib/mixing/prediction/mix-facts.ts";
import { mixFilm, type MixFilm } from "../../lib/mixing/prediction/mix-film.ts";
import { predictedMix, type PredictedMix } from "../../lib/mixing/prediction/predicted-mix.ts";
import {
  finishedSpectrum,
  halo,
  seen,
  type Light,
  type Seen,
  type SeenFinish,
} from "../../lib/mixing/prediction/seen-mix.ts";
import { axisUncertainty } from "../../lib/optics/fit/prediction-uncertainty.ts";
import { spectralCurve } from "../../lib/plots/spectral-curve.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { placesWithin } from "../../lib/words/number-text.ts";
import { held, made, newSwatch, paintSwatch, termRows } from "./mixing/drawn.ts";
import { contrastRange, contrastText, factRows } from "../../lib/present/mix-facts-text.ts";
import { LANGUAGE } from "../../lib/words/in-browser/language.ts";
import {
  MIXING_PAGES as TEXT,
  mixingSentence,
  NUMBERS,
} from "../../lib/words/in-browser/mixing.ts";
import { notationsOf, withRange } from "./mixing/page-data.ts";
import { filledCard } from "./mixing/recipe-card.ts";
import { partsOfSlider, sliderOfParts } from "./mixing/part-slider.ts";

const BENCH = TEXT.bench;
/** Quiet time [ms] after which the address follows the hand: browsers refuse to rewrite it at every move. */
const ADDRESS_AFTER = 250;

withRange("[data-tint-bench]", bench);

/** A black of the range let down: what is shown before anything is asked for. */
function usualState({ whites, data }: MixingRange): BenchState {
  const white = whites[0]?.slug ?? "";
  const isKnown = ({ fit }: MixingPaint): boolean =>
    fit?.whites.some(({ slug }) => slug === white) === true;
  const first =
    data.paints.find((paint) => paint.slug === data.usual && isKnown(paint)) ??
    data.paints.find(isKnown);
  const weighs = [first, whites[0]].every((paint) => paint?.densityGPerCm3 !== undefined);
  return {
    mix: {
      by: weighs ? "volume" : "mass",
      colours: [{ slug: first?.slug ?? "", parts: 1 }],
      white: { slug: white, parts: 10 },
    },
    filmUm: Infinity,
    finish: "glossy",
    light: "daylight",
  };
}

function bench(at: HTMLElement, paints: MixingRange): void {
  const find = (selector: string): Element => held(at, selector, Element);
  const rows = [...at.querySelectorAll<HTMLElement>("[data-part]")].map((row) => ({
    isWhite: row.dataset["part"] === "white",
    paint: row.querySelector("select"),
    slider: row.querySelector<HTMLInputElement>("[data-slider]"),
    number: row.querySelector<HTMLInputElement>("[data-number]"),
  }));
  const film = held(at, "input[data-film]", HTMLInputElement);
  const medium = at.querySelector<HTMLSelectElement>("[data-medium]");
  const volumes = at.querySelector<HTMLInputElement>("[data-volumes]");
  const status = held(at, "[data-status]", HTMLElement);
  const { state: first, remarks } = stateOf(location.search, paints, usualState(paints));
  let state = first;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isAsked = false;

  const show = (said: readonly string[] = []): void => {
    isAsked = false;
    const sentences = [...said];
    const found = predictedMix(state.mix, paints);
    if (isStatement(found)) sentences.push(mixingSentence(found));
    else shown(found);
    at.classList.toggle("bench-tool--empty", isStatement(found));
    status.textContent = sentences.join(" ");
  };

  const shown = (found: PredictedMix): void => {
    const wished = filmOf(found);
    const body = wished === undefined || isStatement(wished) ? found.spectrum : wished.overWhite;
    const spectrum = finishedSpectrum(body, found, state.finish);
    const as = seen(spectrum, state.light);
    const p68 = wished === undefined || isStatement(wished) ? found.uncertainty.p68 : wished.p68;
    const { munsell, name } = notationsOf(spectrum, as.lab, p68);
    paintSwatch(find("[data-mix]"), as.shown);
    find("[data-mix]").setAttribute(
      "aria-label",
      BENCH.swatch(name ?? munsell?.text ?? labText(as, p68)),
    );
    showFilms(held(at, "[data-films]", HTMLElement), wished, found, state);
    for (const { way, shown: ofWay } of halo(as, p68))
      paintSwatch(at.querySelector(`[data-way="${way}"]`), ofWay);
    showPaints(held(at, "[data-paints]", HTMLElement), found.mass, paints);
    find("[data-name]").textContent = name ?? "";
    find("[data-mark]").setAttribute(
      "href",
      found.standing === "read" && wished === undefined ? "#mark-measured" : "#mark-derived",
    );
    const [near, far] = [
      NUMBERS.decimal(p68, 1),
      NUMBERS.decimal((p68 * found.uncertainty.p90) / found.uncertainty.p68, 1),
    ];
    find("[data-trust]").textContent =
      found.standing === "read" && wished === undefined
        ? BENCH.read(near)
        : BENCH.predicted(near, far);
    find("[data-notes]").replaceChildren(
      ...notes(found, wished, as).map((note) => made("li", "", note)),
    );
    const facts = mixFacts(found.mass, paints);
    const figures: (readonly [string, string])[] = [
      [
        BENCH.notations.munsell,
        munsell === undefined
          ? BENCH.munsellNone
          : `${munsell.text} (${BENCH.munsellUncertain(atLeastTenth(munsell.uncertainty.value), atLeastTenth(munsell.uncertainty.chroma))})`,
      ],
      [BENCH.notations.lab, labText(as, p68)],
      ...factRows(facts, mixOpacity(found, paints), paints.data.currency, {
        text: TEXT,
        numbers: NUMBERS,
        language: LANGUAGE,
      }),
    ];
    find("[data-figures]").replaceChildren(...termRows(figures));
    find("[data-spectrum]").innerHTML = curve(found, as);
    filledCard(held(at, "[data-card]", HTMLElement), {
      found,
      as,
      p68,
      figures,
      state,
      range: paints,
      name,
    });
    links(as);
  };

  const mediumWish = (): { medium?: { slug: string; volumes: number } } =>
    state.medium === undefined ? {} : { medium: state.medium };

  const filmOf = (found: PredictedMix): ReturnType<typeof mixFilm> | undefined =>
    state.filmUm === Infinity && state.medium === undefined
      ? undefined
      : mixFilm(found, { filmUm: state.filmUm, ...mediumWish() }, paints);

  const notes = (found: PredictedMix, wished: ReturnType<typeof filmOf>, as: Seen): string[] => [
    ...(found.isBeyond ? [BENCH.beyond] : []),
    ...(wished === undefined
      ? []
      : isStatement(wished)
        ? [mixingSentence(wished), BENCH.asCoat]
        : state.filmUm === Infinity
          ? []
          : [
              BENCH.filmSentence(
                TEXT.micrometres(state.filmUm),
                contrastText(contrastRange(wished), NUMBERS),
                NUMBERS.decimal(wished.p68, 1),
              ),
            ]),
    ...(state.light === "daylight" ? [] : [BENCH.lampNote(TEXT.lamps[state.light])]),
    ...(state.finish === "matte" ? [BENCH.matteNote] : []),
    ...(as.shown.inGamut ? [] : [BENCH.outOfGamut]),
  ];

  const links = ({ lab }: Seen): void => {
    const at = [lab.L, lab.a, lab.b].map((value) => Number(value.toFixed(2))).join(" ");
    find("[data-find]").setAttribute("href", `recipes/?target=${encodeURIComponent(at)}`);
    find("[data-keep]").setAttribute(
      "href",
      `palette/?set=${[...state.mix.colours.filter(({ parts }) => parts > 0), state.mix.white].map(({ slug }) => slug).join(",")}`,
    );
  };

  /** The tool's fields from the state. */
  const fill = (): void => {
    let next = 0;
    for (const { isWhite, paint, slider, number } of rows) {
      const part = isWhite ? state.mix.white : state.mix.colours[next++];
      if (paint === null || slider === null || number === null) continue;
      paint.value = part?.slug ?? "";
      number.value = part === undefined ? "" : String(part.parts);
      slider.value = String(sliderOfParts(part?.parts ?? 0));
      slider.setAttribute("aria-valuetext", `${number.value || "0"} ${BENCH.partsShort}`);
    }
    check("by", state.mix.by);
    check("light", state.light);
    check("finish", state.finish);
    film.value = state.filmUm === Infinity ? "" : String(state.filmUm);
    if (medium !== null) medium.value = state.medium?.slug ?? "";
    if (volumes !== null) volumes.value = String(state.medium?.volumes ?? 1);
  };

  const check = (name: string, value: string): void => {
    const input = at.querySelector<HTMLInputElement>(`input[name="${name}"][value="${value}"]`);
    if (input !== null) input.checked = true;
  };

  const chosen = (name: string): string =>
    at.querySelector<HTMLInputElement>(`input[name="${name}"]:checked`)?.value ?? "";

  /** The state from the tool's fields. */
  const read = (): BenchState => {
    const part = ({ paint, number }: (typeof rows)[number]): MixPart[] =>
      paint === null || paint.value === ""
        ? []
        : [{ slug: paint.value, parts: positive(number?.value ?? "") }];
    const byColour = new Map<string, MixPart>();
    for (const row of rows.filter(({ isWhite }) => !isWhite))
      for (const { slug, parts } of part(row))
        byColour.set(slug, { slug, parts: (byColour.get(slug)?.parts ?? 0) + parts });
    const white = rows.filter(({ isWhite }) => isWhite).flatMap(part)[0] ?? state.mix.white;
    const um = Number(film.value);
    return {
      mix: { by: chosen("by") as Mix["by"], colours: [...byColour.values()], white },
      filmUm: film.value !== "" && um >= 1 && um <= 500 ? um : Infinity,
      finish: chosen("finish") as SeenFinish,
      light: chosen("light") as Light,
      ...(medium === null || medium.value === ""
        ? {}
        : { medium: { slug: medium.value, volumes: positive(volumes?.value ?? "1") } }),
    };
  };

  const changed = (): void => {
    state = read();
    if (!isAsked) {
      isAsked = true;
      requestAnimationFrame(() => show());
    }
    clearTimeout(timer);
    timer = setTimeout(() => {
      const address = new URL(location.href);
      address.search = addressOf(state);
      history.replaceState(null, "", address);
    }, ADDRESS_AFTER);
  };

  for (const { paint, slider, number } of rows) {
    slider?.addEventListener("input", () => {
      const parts = partsOfSlider(Number(slider.value));
      if (number !== null) number.value = String(parts);
      slider.setAttribute("aria-valuetext", `${parts} ${BENCH.partsShort}`);
      changed();
    });
    number?.addEventListener("input", () => {
      if (slider !== null) slider.value = String(sliderOfParts(positive(number.value)));
      changed();
    });
    paint?.addEventListener("change", () => {
      // A colour just chosen is mixed in at once.
      if (paint.value !== "" && number !== null && number.value === "") {
        number.value = "1";
        if (slider !== null) slider.value = String(sliderOfParts(1));
      }
      changed();
    });
  }
  for (const field of at.querySelectorAll<HTMLElement>(
    ".choices input, [data-film], [data-medium], [data-volumes]",
  ))
    field.addEventListener("input", changed);
  held(at, "[data-print]", HTMLButtonElement).addEventListener("click", () => {
    document.body.classList.add("card-alone");
    print();
    document.body.classList.remove("card-alone");
  });
  held(at, "[data-copy]", HTMLButtonElement).addEventListener("click", () => {
    const address = new URL(location.href);
    address.search = addressOf(state);
    const said = held(at, "[data-copied]", HTMLElement);
    navigator.clipboard.writeText(address.href).then(
      () => (said.textContent = BENCH.copied),
      () => (said.textContent = BENCH.copyFailed),
    );
  });
  addEventListener("popstate", () => {
    ({ state } = stateOf(location.search, paints, usualState(paints)));
    fill();
    show();
  });
  fill();
  show(remarks.map(mixingSentence));
}

function positive(text: string): number {
  const value = Number(text);
  return text !== "" && value >= 0 && value <= 10000 ? value : 0;
}

/** A width that rounds to none is no more than a tenth. */
function atLeastTenth(width: number): string {
  return NUMBERS.decimal(Math.max(width, 0.1), 1);
}

function labText({ lab }: Seen, p68: number): string {
  const u = axisUncertainty(p68, lab);
  const one = (value: number, width: number): string => {
    const places = placesWithin(width, 1);
    return `${NUMBERS.decimal(value, places)} \u00b1${NUMBERS.decimal(width, 1)}`;
  };
  return BENCH.lab(one(lab.L, u.L), one(lab.a, u.a), one(lab.b, u.b));
}

function showFilms(
  place: HTMLElement,
  wished: MixFilm | object | undefined,
  found: PredictedMix,
  { finish, light, filmUm }: BenchState,
): void {
  const films =
    wished !== undefined && !isStatement(wished) && filmUm !== Infinity
      ? (wished as MixFilm)
      : undefined;
  place.hidden = films === undefined;
  if (films === undefined) return;
  const [black, white] = [...place.querySelectorAll("figure")];
  for (const [figure, spectrum] of [
    [black, films.overBlack],
    [white, films.overWhite],
  ] as const)
    paintSwatch(figure ?? null, seen(finishedSpectrum(spectrum, found, finish), light).shown);
}

/** The tubes that it is made of, each with its share of the whole. */
function showPaints(place: HTMLElement, mass: Mix, paints: MixingRange): void {
  const parts = partsOf(mass);
  const key = parts.map(({ slug }) => slug).join();
  if (place.dataset["key"] === key) return;
  place.dataset["key"] = key;
  place.replaceChildren(
    ...parts.map(({ slug }) => {
      const paint = paints.paint(slug);
      const link = made("a", "", paint?.name ?? slug);
      link.href = `../colours/${slug}/`;
      const swatch = paint?.screen === undefined ? [] : [newSwatch(paint.screen)];
      return made("li", "", ...swatch, link);
    }),
  );
}

function curve({ standing, spectrum }: PredictedMix, { shown }: Seen): string {
  return spectralCurve({
    decimalMark: NUMBERS.mark,
    idPrefix: "mix-spectrum",
    title: BENCH.spectrumTitle,
    description: BENCH.spectrumTitle,
    curves: [
      {
        label: "",
        spectrum,
        colour: shown,
        standing: standing === "read" ? "measured" : "derived",
      },
    ],
    wavelengthLabel: BENCH.wavelength,
    reflectanceLabel: (end) =>
      end < 1 ? BENCH.reflectanceTo(NUMBERS.plain(end)) : BENCH.reflectance,
    areaHeight: 120,
  });
}
