/** On the map of the range: the outlines that are left without one colour, dotted, and how much smaller they are. */
import { reachedShare, type Hull, type Told } from "../../lib/mixing/reach/hull.ts";
import { receivedHull, type SentReach } from "../../lib/mixing/reach/sent-reach.ts";
import { percentText } from "../../lib/present/mix-facts-text.ts";
import { MIXING_PAGES as TEXT, mixingSentence } from "../../lib/words/in-browser/mixing.ts";
import { held } from "./mixing/drawn.ts";
import { mixingReaches } from "./mixing/sent-reach.ts";

const KEY = "without";
const root = document.querySelector<HTMLElement>("[data-map]");
const reach = mixingReaches?.find(({ white }) => white === root?.dataset["white"]);
if (reach !== undefined && root !== null) alive(root, reach);

function alive(at: HTMLElement, { levels }: SentReach): void {
  const select = held(at, "[data-without-colour]", HTMLSelectElement);
  const said = held(at, "[data-said]", HTMLElement);
  const show = (): void => {
    const left = levels.flatMap(({ L, all, without }) => {
      const own = without[select.value];
      return own === undefined
        ? []
        : [{ L, whole: receivedHull(L, all), left: receivedHull(L, own) }];
    });
    for (const form of ["wide", "narrow"] as const)
      at.querySelector(`.picture__${form} .plot__without`)?.setAttribute(
        "d",
        left.length === 0
          ? "M0 0"
          : left.map((one) => pathOf(one.left, at.getAttribute(`data-${form}`) ?? "")).join(""),
      );
    const name = select.selectedOptions[0]?.textContent ?? "";
    said.textContent =
      select.value === ""
        ? ""
        : left.length === 0
          ? TEXT.map.withoutNothing(name)
          : TEXT.map.withoutSaid(
              name,
              left.map(({ L, whole, left: own }) =>
                TEXT.map.withoutAt(percentText(lost(reachedShare(own, whole))), L),
              ),
            );
  };
  select.addEventListener("change", () => {
    const address = new URL(location.href);
    address.search = select.value === "" ? "" : `${KEY}=${select.value}`;
    history.replaceState(null, "", address);
    show();
  });
  const asked = new URLSearchParams(location.search).get(KEY);
  const isKnown = [...select.options].some(({ value }) => value === asked);
  if (asked !== null && isKnown) select.value = asked;
  held(at, "[data-choice]", HTMLElement).hidden = false;
  show();
  if (asked !== null && !isKnown)
    said.textContent = mixingSentence({ rule: "no-such-paint", values: { slug: asked } });
}

function lost({ value, p68 }: Told): Told {
  return { value: Math.max(1 - value, 0), p68 };
}

function pathOf({ corners }: Hull, scale: string): string {
  const [originX = 0, originY = 0, unit = 0] = scale.split(" ").map(Number);
  const places = corners.map(
    ({ a, b }) => `${(originX + unit * a).toFixed(1)} ${(originY - unit * b).toFixed(1)}`,
  );
  return places.length === 0 ? "" : `M${places.join("L")}Z`;
}
