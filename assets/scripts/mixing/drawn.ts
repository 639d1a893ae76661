/** Swatches and lists as pages draw them, made by a script. */
import type { Shown } from "../../../lib/mixing/prediction/seen-mix.ts";

type Paint = Pick<Shown, "hex"> & { readonly displayP3?: string };

/** Give a swatch of the page its colour. */
export function paintSwatch(swatch: Element | null, paint: Paint): void {
  const group = swatch?.querySelector("g");
  const shape = group?.querySelector("path");
  group?.setAttribute("fill", paint.hex);
  if (paint.displayP3 === undefined) shape?.removeAttribute("fill");
  else shape?.setAttribute("fill", paint.displayP3);
}

const SVG = "http://www.w3.org/2000/svg";

/** A swatch as templates/macros/swatch.njk draws it. */
export function newSwatch(paint: Paint): SVGElement {
  const svg = document.createElementNS(SVG, "svg");
  for (const [name, value] of [
    ["class", "swatch"],
    ["viewBox", "0 0 1 1"],
    ["preserveAspectRatio", "none"],
    ["aria-hidden", "true"],
  ] as const)
    svg.setAttribute(name, value);
  const group = document.createElementNS(SVG, "g");
  const shape = document.createElementNS(SVG, "path");
  shape.setAttribute("d", "M0 0h1v1H0z");
  group.append(shape);
  svg.append(group);
  paintSwatch(svg, paint);
  return svg;
}

/** An element with text or children in it. */
export function made<K extends keyof HTMLElementTagNameMap>(
  name: K,
  className: string,
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(name);
  if (className !== "") element.className = className;
  element.append(...children);
  return element;
}

/** Terms with what is said of each. */
export function termRows(rows: readonly (readonly [name: string, said: string])[]): HTMLElement[] {
  return rows.map(([name, said]) => made("div", "", made("dt", "", name), made("dd", "", said)));
}

/**
 * An element that the page's template holds.
 * @throws Error where it does not, or is of another kind.
 */
export function held<T extends Element>(
  root: Element,
  selector: string,
  kind: abstract new () => T,
): T {
  const found = root.querySelector(selector);
  if (!(found instanceof kind)) throw new Error(`The page lacks ${selector}`);
  return found;
}
