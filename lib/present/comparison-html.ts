import { escapedMarkup } from "../exchange/escaped-markup.ts";
import type {
  ComparisonCellView,
  ComparisonPartView,
  ComparisonRowView,
  ComparisonView,
  ShownPaint,
} from "./comparison-types.ts";
import { asMarkup, type Markup, type StandingView } from "./views.ts";
import { typesetText } from "../words/typeset-text.ts";

/**
 * A comparison as HTML, every text escaped: one drawing for a built page and for the script, so that the two cannot
 * drift. Swatches and figures are tables of the same columns, a column a colour; the heading of a part is an h2.
 * @param words heads of the first column and of the last.
 */
export function comparisonMarkup(
  view: ComparisonView,
  { property, finding }: { readonly property: string; readonly finding: string },
): Markup {
  return asMarkup(
    [
      swatchesMarkup(view, property, finding),
      `<div class="wrap comparison__body">`,
      `<p class="comparison__summary">${escaped(view.summary)}</p>`,
      ...view.parts.map((part) => partMarkup(part, view, property, finding)),
      view.unstated === undefined ? "" : `<p class="note">${escaped(view.unstated)}</p>`,
      `</div>`,
    ].join("\n"),
  );
}

function swatchesMarkup(
  { caption, columns, swatches }: ComparisonView,
  property: string,
  finding: string,
): string {
  if (swatches.length === 0) return "";
  const heads = columns
    .map(
      ({ text, href, index }) =>
        `<th scope="col"><a href="${escaped(href)}">${escaped(text)}</a>${index === undefined ? "" : ` <span class="index-name">${escaped(index)}</span>`}</th>`,
    )
    .join("");
  const rows = swatches.map(
    ({ head, isAlone, swatches: cells, saying }) =>
      `<tr${isAlone ? ` class="comparison__alone"` : ""}><th scope="row">${escaped(head)}</th>${cells
        .map(
          ({ paint, text }) => `<td class="comparison__swatch">${swatchMarkup(paint, text)}</td>`,
        )
        .join(
          "",
        )}<td class="comparison__saying">${saying === undefined ? "" : escaped(saying)}</td></tr>`,
  );
  return (
    `<div class="comparison-band"><div class="wrap"><table class="comparison comparison--${columns.length}"><caption class="hidden">${escaped(caption)}</caption>` +
    `<thead><tr><th scope="col"><span class="hidden">${escaped(property)}</span></th>${heads}<th scope="col"><span class="hidden">${escaped(finding)}</span></th></tr></thead>` +
    `<tbody>${rows.join("\n")}</tbody></table></div></div>`
  );
}

/** As templates/macros/swatch.njk draws it, with its figures for who does not see it. */
function swatchMarkup(paint: ShownPaint | undefined, text: string): string {
  if (paint === undefined) return `<span class="swatch swatch--missing">${escaped(text)}</span>`;
  const { hex, displayP3 } = paint;
  return (
    `<svg class="swatch" viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true"><g fill="${escaped(hex)}"><path d="M0 0h1v1H0z"${displayP3 === undefined ? "" : ` fill="${escaped(displayP3)}"`}/></g></svg>` +
    `<span class="hidden">${escaped(text)}</span>`
  );
}

function partMarkup(
  part: ComparisonPartView,
  view: ComparisonView,
  property: string,
  finding: string,
): string {
  const heading = `<h2 id="${part.id}">${escaped(part.heading)}</h2>`;
  const table = tableMarkup(part, view, property, finding);
  return part.folded !== undefined
    ? `<details class="fold comparison__part"><summary>${heading} <span class="note">${escaped(part.folded)}</span></summary>${table}</details>`
    : `<section class="comparison__part" aria-labelledby="${part.id}">${heading}${table}</section>`;
}

function tableMarkup(
  { caption, rows }: ComparisonPartView,
  { columns }: ComparisonView,
  property: string,
  finding: string,
): string {
  const heads = columns
    .map(({ text, href }) => `<th scope="col"><a href="${escaped(href)}">${escaped(text)}</a></th>`)
    .join("");
  return (
    `<table class="comparison comparison--${columns.length}"><caption class="hidden">${escaped(caption)}</caption>` +
    `<thead><tr><th scope="col">${escaped(property)}</th>${heads}<th scope="col">${escaped(finding)}</th></tr></thead>` +
    `<tbody>${rows
      .map((row) =>
        rowMarkup(
          row,
          columns.map(({ text }) => text),
        ),
      )
      .join("\n")}</tbody></table>`
  );
}

function rowMarkup(
  { head, unit, saying, cells }: ComparisonRowView,
  names: readonly string[],
): string {
  const said = `<td class="comparison__saying">${saying === undefined ? "" : escaped(saying)}</td>`;
  return (
    `<tr><th scope="row">${escaped(head)}${unit === undefined ? "" : ` <span class="unit">${escaped(unit)}</span>`}</th>` +
    cells
      .map((cell, i) => `<td data-head="${escaped(names[i] ?? "")}">${cellMarkup(cell)}</td>`)
      .join("") +
    `${said}</tr>`
  );
}

function cellMarkup({ lead, text, standing, note, items, href }: ComparisonCellView): string {
  const shown =
    text === undefined
      ? ""
      : href === undefined
        ? escaped(text)
        : `<a href="${escaped(href)}">${escaped(text)}</a>`;
  const figure =
    text === undefined && standing === undefined
      ? ""
      : `<span class="comparison__figure">${shown}${standing === undefined ? "" : standingMarkup(standing, text === undefined)}</span>`;
  return (
    (lead === undefined ? "" : `<span class="comparison__lead">${escaped(lead)}</span>`) +
    figure +
    (items.length === 0
      ? ""
      : `<ul>${items.map((item) => `<li>${escaped(item)}</li>`).join("")}</ul>`) +
    (note === undefined ? "" : `<span class="note">${escaped(note)}</span>`)
  );
}

/** As templates/macros/standing.njk draws it: beside a value its mark, alone with its word. */
function standingMarkup({ kind, word }: StandingView, isAlone: boolean): string {
  return (
    `<span class="standing${isAlone ? "" : " standing--brief"}"><svg class="standing__mark" viewBox="0 0 16 12" width="16" height="12" aria-hidden="true"><use href="#mark-${kind.replaceAll(" ", "-")}"></use></svg>` +
    `<span${isAlone ? "" : ` class="hidden"`}>${escaped(word)}</span></span>`
  );
}

/** Text and attributes of HTML. */
function escaped(text: string): string {
  return escapedMarkup(typesetText(text));
}
