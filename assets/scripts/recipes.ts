/**
 * What a colour can be mixed from: a target and wishes in the address, the search in a worker beside the page (in
 * slices on the page itself where a browser starts none, as from a folder), its finds as a list.
 */
import { worstLamp } from "../../lib/colorimetry/lamps.ts";
import { nearestWord } from "../../lib/diagnostics/nearest-word.ts";
import { ORDERS, type JudgedMix } from "../../lib/mixing/finding/judged-mix.ts";
import { targetOfText } from "../../lib/mixing/finding/target-text.ts";
import { readTarget, type Target } from "../../lib/mixing/finding/target.ts";
import { mixPartsText, toSmallest } from "../../lib/present/mix-parts-text.ts";
import { addressOf } from "../../lib/mixing/mix-address.ts";
import type { MixingRange } from "../../lib/mixing/mixing-range.ts";
import { volumeMix } from "../../lib/mixing/prediction/mass-mix.ts";
import { seen, shownLab, type Shown } from "../../lib/mixing/prediction/seen-mix.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { held, made, newSwatch, paintSwatch, termRows } from "./mixing/drawn.ts";
import {
  differenceText,
  driesText,
  hidesText,
  lastsText,
  priceText,
  warningText,
} from "../../lib/present/mix-facts-text.ts";
import { LANGUAGE } from "../../lib/words/in-browser/language.ts";
import {
  MIXING_PAGES as TEXT,
  mixingSentence,
  NUMBERS,
} from "../../lib/words/in-browser/mixing.ts";
import { readyNotations, withRange } from "./mixing/page-data.ts";
import { reader, type ReadColumn } from "./mixing/read-file.ts";
import { searchRecipes, type RecipeReport, type RecipeWish } from "./mixing/recipe-search.ts";
import type { NoRange } from "./mixing/sent-range.ts";

const RECIPES = TEXT.recipes;
const SHOWN_FIRST = 12;
/** Worked out in full before more are asked for. */
const MOST_FIRST = 150;

withRange("[data-recipes]", (at, paints) => {
  readyNotations();
  recipes(at, paints);
});

function recipes(at: HTMLElement, paints: MixingRange): void {
  const find = (selector: string): Element => held(at, selector, Element);
  const form = held(at, "[data-form]", HTMLFormElement);
  const status = held(at, "[data-status]", HTMLElement);
  const place = held(at, "[data-found]", HTMLElement);
  const more = held(at, "[data-more]", HTMLButtonElement);
  const file = held(at, "[data-file]", HTMLInputElement);
  const column = held(at, "[data-column]", HTMLSelectElement);
  const percent = held(at, "[data-percent]", HTMLInputElement);
  let columns: readonly ReadColumn[] = [];
  let [shown, most] = [SHOWN_FIRST, MOST_FIRST];
  let latest: RecipeReport | undefined;
  let target: Target | undefined;
  const search = startedSearch(at.dataset["root"] ?? "", paints);

  const run = (): void => {
    const data = new FormData(form);
    const wanted = targetOf(data, columns[column.selectedIndex], percent.checked, paints);
    [shown, most] = [SHOWN_FIRST, MOST_FIRST];
    latest = undefined;
    place.replaceChildren();
    more.hidden = true;
    const band = held(at, "[data-band]", HTMLElement);
    band.hidden = typeof wanted === "string";
    if (typeof wanted === "string") {
      status.textContent = wanted;
      search.stop();
      return;
    }
    target = wanted;
    paintSwatch(find("[data-band] .recipe-band__target"), shownTarget(wanted));
    find("[data-target]").textContent = RECIPES.targetName(
      wanted.name,
      RECIPES.origin[wanted.origin],
    );
    status.textContent = RECIPES.looking(0);
    look();
  };

  const look = (): void => {
    if (target === undefined) return;
    search.start(wishOf(new FormData(form), target, most), (report) => {
      if (typeof report === "string") {
        status.textContent = report;
        return;
      }
      // While more are looked for, those that are known stay.
      if (!report.isDone && shown > SHOWN_FIRST) return;
      latest = report;
      list();
    });
  };

  const list = (): void => {
    if (latest === undefined || target === undefined) return;
    const { recipes: all, tried, reached, isDone, quickest } = latest;
    const within = all.filter(({ isWithin }) => isWithin).length;
    const listed = all.slice(0, shown);
    status.textContent = isDone
      ? [
          tried === 0
            ? RECIPES.nothingMixes
            : RECIPES.found(
                within,
                reached - within,
                tried,
                within === all.length && within < reached,
              ),
          ...(reached === 0 && quickest !== undefined ? [RECIPES.quickest(quickest)] : []),
          ...(listed.length < reached && listed.length > 0 ? [RECIPES.shown(listed.length)] : []),
        ].join(" ")
      : RECIPES.looking(tried);
    more.hidden = !isDone || shown >= reached;
    const wanted = shownTarget(target);
    const part = (isWithin: boolean, heading: string): HTMLElement[] => {
      const own = listed.filter((one) => one.isWithin === isWithin);
      return own.length === 0
        ? []
        : [
            made("h2", "", heading),
            made("ol", "recipes", ...own.map((one) => recipeItem(one, wanted, paints))),
          ];
    };
    place.replaceChildren(...part(true, RECIPES.within), ...part(false, RECIPES.near));
  };

  const keepAddress = (): void => {
    const address = new URL(location.href);
    const given = new URLSearchParams();
    for (const [key, value] of new FormData(form))
      if (typeof value === "string" && value !== "" && !(key === "order" && value === "fewest"))
        given.append(key, value);
    address.search = given.toString();
    history.replaceState(null, "", address);
  };

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    keepAddress();
    run();
  });
  form.addEventListener("change", (event) => {
    const { target: field } = event;
    if (field === file) {
      void chosenFile();
      return;
    }
    // One target at a time: what was touched last counts.
    if (field instanceof HTMLSelectElement && field.name === "colour" && field.value !== "")
      forget("text");
    if (field instanceof HTMLInputElement && field.name === "target" && field.value !== "")
      forget("colour");
    if (field instanceof HTMLInputElement && field.name === "target") return;
    keepAddress();
    run();
  });
  more.addEventListener("click", () => {
    shown += 2 * SHOWN_FIRST;
    list();
    if (latest !== undefined && shown > latest.recipes.length && most < latest.reached) {
      most *= 2;
      look();
    }
  });

  const forget = (kept: "text" | "colour" | "file"): void => {
    const text = form.elements.namedItem("target") as HTMLInputElement;
    const colour = form.elements.namedItem("colour") as HTMLSelectElement;
    if (kept !== "colour") text.value = "";
    if (kept !== "text") colour.value = "";
    if (kept !== "file") {
      file.value = "";
      columns = [];
      held(at, "[data-columns]", HTMLElement).hidden = true;
    }
  };

  const chosenFile = async (): Promise<void> => {
    const chosen = file.files?.[0];
    if (chosen === undefined) return;
    try {
      const read = (await reader(at.dataset["root"] ?? ""))(chosen.name, await chosen.text());
      if ("fault" in read) {
        columns = [];
        status.textContent = read.fault;
        place.replaceChildren();
        return;
      }
      const text = form.elements.namedItem("target") as HTMLInputElement;
      const colour = form.elements.namedItem("colour") as HTMLSelectElement;
      [text.value, colour.value] = ["", ""];
      ({ columns } = read);
      column.replaceChildren(...columns.map(({ name }) => made("option", "", name)));
      percent.checked = columns[0]?.declaredScale === "percent";
      held(at, "[data-columns]", HTMLElement).hidden = false;
      keepAddress();
      run();
    } catch (error) {
      if (!(error instanceof TypeError)) throw error;
      status.textContent = TEXT.noData;
    }
  };

  const faults = filled(form, paints);
  const data = new FormData(form);
  if (data.get("target") !== "" || data.get("colour") !== "") run();
  if (faults.length > 0) status.textContent = faults.join(" ");
}

/** The form's fields from the address; what there is none of is said. */
function filled(form: HTMLFormElement, paints: MixingRange): string[] {
  const asked = new URLSearchParams(location.search);
  const faults: string[] = [];
  for (const key of new Set(asked.keys())) {
    const fields = [...form.elements].filter(
      (field): field is HTMLInputElement | HTMLSelectElement =>
        (field instanceof HTMLInputElement || field instanceof HTMLSelectElement) &&
        field.name === key,
    );
    for (const value of asked.getAll(key)) {
      const tick = fields.find((field) => field.type === "checkbox" && field.value === value);
      const [first] = fields;
      if (tick instanceof HTMLInputElement) tick.checked = true;
      else if (first instanceof HTMLSelectElement) {
        if ([...first.options].some((option) => option.value === value)) first.value = value;
        else faults.push(unknown(key, value, paints));
      } else if (first instanceof HTMLInputElement && first.type !== "checkbox")
        first.value = value;
      else if (first !== undefined) faults.push(unknown(key, value, paints));
    }
  }
  return faults;
}

function unknown(key: string, value: string, paints: MixingRange): string {
  if (!["colour", "white", "out", "must"].includes(key))
    return mixingSentence({ rule: "no-such-choice", values: { key, value } });
  const near = nearestWord(
    value,
    paints.data.paints.map(({ slug }) => slug),
  );
  return mixingSentence({
    rule: "no-such-paint",
    values: {
      slug: value,
      ...(near === undefined ? {} : { near: paints.paint(near)?.name ?? near }),
    },
  });
}

/** A field's text; none of a file. */
function textOf(data: FormData, key: string): string {
  const value = data.get(key);
  return typeof value === "string" ? value : "";
}

function wishOf(data: FormData, target: Target, most: number): RecipeWish {
  const number = (key: string): number | undefined => {
    const text = textOf(data, key);
    const value = Number(text);
    return text !== "" && value > 0 ? value : undefined;
  };
  const texts = (key: string): string[] =>
    data.getAll(key).filter((value) => typeof value === "string");
  const white = textOf(data, "white");
  const [days, lightfastness, opacity, price] = ["days", "lasts", "hides", "price"].map(number);
  const colour = textOf(data, "colour");
  return {
    target,
    most,
    ...(white === "" ? {} : { white }),
    coloursMost: data.get("four") === null ? 3 : 4,
    isWhiteFree: data.get("free") !== null,
    // Its own tube is no recipe for a colour.
    leaveOut: [...texts("out"), ...(target.origin === "range" ? [colour] : [])],
    mustHold: texts("must"),
    order: ORDERS.find((order) => order === data.get("order")) ?? "fewest",
    limits: {
      withoutMetals: texts("metal"),
      isUnlabelled: data.get("unlabelled") !== null,
      ...(days === undefined ? {} : { days }),
      ...(lightfastness === undefined ? {} : { lightfastness }),
      ...(opacity === undefined ? {} : { opacity }),
      ...(price === undefined ? {} : { price }),
    },
  };
}

/** What is wanted, or a sentence why it cannot be looked for. */
function targetOf(
  data: FormData,
  column: ReadColumn | undefined,
  isPercent: boolean,
  paints: MixingRange,
): Target | string {
  if (column !== undefined) {
    const read = column.read(isPercent ? "percent" : "factor");
    if ("fault" in read) return read.fault;
    return readTarget(column.name, "reading", {
      spectrum: read.spectrum,
      geometry: read.geometry ?? "d/8 excluded",
      ...(paints.surface === undefined ? {} : { surface: paints.surface }),
    });
  }
  const slug = textOf(data, "colour");
  if (slug !== "") {
    const reading = paints.masstone(slug);
    const paint = paints.paint(slug);
    if (reading === undefined)
      return mixingSentence({
        rule: "paint-not-fitted",
        values: { paint: paint?.name ?? slug, reason: paint?.refusal ?? "" },
      });
    return readTarget(paint?.name ?? slug, "range", reading);
  }
  try {
    const found = targetOfText(textOf(data, "target"));
    return isStatement(found) ? mixingSentence(found) : found;
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return TEXT.noData;
  }
}

function shownTarget({ lab, spectrum }: Target): Shown {
  return spectrum === undefined ? shownLab(lab) : seen(spectrum, "daylight").shown;
}

function recipeItem(recipe: JudgedMix, wanted: Shown, paints: MixingRange): HTMLElement {
  const { mix, deltaE00: difference, p68, facts, lamps } = recipe;
  const volume = volumeMix(mix, paints);
  const shownMix = volume ?? mix;
  const state = { filmUm: Infinity, finish: "glossy", light: "daylight" } as const;
  const link = made("a", "", RECIPES.tryIt);
  link.href = `../?${addressOf({ mix: toSmallest(shownMix), ...state })}`;
  const worst = worstLamp(lamps.deltaE00);
  const lampText =
    lamps.kind === "parts"
      ? TEXT.facts.lampsPart(worst, lamps.deltaE00, p68)
      : TEXT.facts.lampsShift(worst, lamps.deltaE00, p68);
  const { notations } = TEXT.bench;
  return made(
    "li",
    "recipe",
    made("div", "recipe__swatches", newSwatch(wanted), newSwatch(recipe.shown)),
    made(
      "div",
      "recipe__said",
      made("p", "recipe__parts", mixPartsText(shownMix, paints, TEXT, NUMBERS)),
      made("p", "recipe__difference", differenceText(difference, p68, NUMBERS)),
      made(
        "dl",
        "recipe__facts",
        ...termRows([
          [RECIPES.lamps, lampText],
          [notations.lasts, lastsText(facts, TEXT)],
          [notations.dries, driesText(facts, TEXT)],
          [notations.hides, hidesText(recipe.opacity, TEXT, NUMBERS)],
          [notations.warning, warningText(facts, TEXT)],
          [
            notations.price,
            priceText(facts, paints.data.currency, { text: TEXT, language: LANGUAGE }),
          ],
        ]),
      ),
      made("p", "", link),
    ),
  );
}

interface Search {
  readonly start: (wish: RecipeWish, report: (report: RecipeReport | string) => void) => void;
  readonly stop: () => void;
}

/** In a worker; on the page itself where none starts. */
function startedSearch(toRoot: string, paints: MixingRange): Search {
  let turn = 0;
  const onPage: Search = {
    start: (wish, report) => {
      const own = ++turn;
      void searchRecipes(wish, paints, report, () => own !== turn).catch(() =>
        report(RECIPES.failed),
      );
    },
    stop: () => turn++,
  };
  if (location.protocol === "file:" || typeof Worker === "undefined") return onPage;
  try {
    const worker = new Worker(`${toRoot}assets/scripts/recipe-worker.js`);
    let failed = false;
    let pending: Parameters<Search["start"]> | undefined;
    worker.addEventListener("error", () => {
      failed = true;
      if (pending !== undefined) onPage.start(...pending);
    });
    return {
      start: (wish, report) => {
        pending = [wish, report];
        if (failed) {
          onPage.start(wish, report);
          return;
        }
        worker.onmessage = ({ data }: MessageEvent<RecipeReport | { fault: NoRange }>) => {
          if (pending?.[0] !== wish) return;
          if ("fault" in data) report(TEXT[data.fault]);
          else report(data);
        };
        worker.postMessage(wish);
      },
      stop: () => {
        pending = undefined;
        onPage.stop();
      },
    };
  } catch {
    return onPage;
  }
}
