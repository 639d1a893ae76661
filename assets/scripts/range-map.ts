/** On the map of the range: the outline that is left without one colour, dotted, and how much smaller it is. */
import { directionAngle, outlineArea, type Outline } from "../../lib/mixing/reach/range-outline.ts";
import { MIXING_PAGES as TEXT } from "../../lib/words/en/mixing-pages.ts";
import { decimalText } from "../../lib/words/number-text.ts";
import { held } from "./mixing/drawn.ts";
import { mixingReach, type SentReach } from "./mixing/sent-reach.ts";

const KEY = "without";
const root = document.querySelector("[data-map]");
if (mixingReach !== undefined && root !== null) alive(root, mixingReach);

function alive(at: Element, { all, without }: SentReach): void {
  const select = held(at, "[data-without-colour]", HTMLSelectElement);
  const said = held(at, "[data-said]", HTMLElement);
  const show = (): void => {
    const left = without[select.value];
    for (const form of ["wide", "narrow"] as const)
      at.querySelector(`.picture__${form} .plot__without`)?.setAttribute(
        "d",
        left === undefined ? "M0 0" : pathOf(left, at.getAttribute(`data-${form}`) ?? ""),
      );
    const name = select.selectedOptions[0]?.textContent ?? "";
    const share = left === undefined ? 0 : 1 - outlineArea(left) / outlineArea(all);
    said.textContent =
      left === undefined
        ? ""
        : share < 0.01
          ? TEXT.map.withoutNothing(name)
          : TEXT.map.withoutSaid(name, `${decimalText(100 * share, 0)}\u00a0%`);
  };
  select.addEventListener("change", () => {
    const address = new URL(location.href);
    address.search = select.value === "" ? "" : `${KEY}=${select.value}`;
    history.replaceState(null, "", address);
    show();
  });
  const asked = new URLSearchParams(location.search).get(KEY);
  if (asked !== null && asked in without) select.value = asked;
  held(at, "[data-choice]", HTMLElement).hidden = false;
  show();
}

function pathOf(outline: Outline, scale: string): string {
  const [originX = 0, originY = 0, unit = 0] = scale.split(" ").map(Number);
  const places = outline.map((radius, i) => {
    const angle = directionAngle(i);
    return `${(originX + unit * radius * Math.cos(angle)).toFixed(1)} ${(originY - unit * radius * Math.sin(angle)).toFixed(1)}`;
  });
  return `M${places.join("L")}Z`;
}
