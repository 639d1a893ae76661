import { asMarkup, type Markup, type PictureView } from "../../lib/present/views.ts";

/** Stand-ins for the drawings of lib/plots, with its class names, so that pages can be laid out without it. */
export function swatch(fill: string, name: string, tint?: string): Markup {
  const lower = tint === undefined ? "" : `<rect x="12" y="62" width="96" height="22" fill="${tint}"/>`;
  return asMarkup(`<svg class="panel" viewBox="0 0 120 96" role="img" aria-label="${name}"><rect width="120" height="96" fill="#adadad"/><rect class="swatch" x="12" y="12" width="96" height="${tint === undefined ? 72 : 50}" fill="${fill}"/>${lower}</svg>`);
}

export function cellSwatch(fill: string): Markup {
  return asMarkup(`<svg class="panel" viewBox="0 0 36 24" width="36" height="24" aria-hidden="true"><rect width="36" height="24" fill="#adadad"/><rect class="swatch" x="6" y="5" width="24" height="14" fill="${fill}"/></svg>`);
}

export function panel(masstone: string, tints: readonly (readonly string[])[]): PictureView {
  const rows = tints.map((row, y) => row.map((fill, x) => `<rect class="swatch" x="${440 + x * 150}" y="${24 + y * 96}" width="138" height="72" fill="${fill}"/>`).join("")).join("");
  const narrowRows = tints.map((row, y) => row.map((fill, x) => `<rect class="swatch" x="${12 + x * 90}" y="${120 + y * 60}" width="82" height="40" fill="${fill}"/>`).join("")).join("");
  const height = Math.max(240, 24 + tints.length * 96);
  return {
    svg: asMarkup(`<svg class="panel" viewBox="0 0 912 ${height}" role="img" aria-label="Masstone beside its tints"><rect width="912" height="${height}" fill="#adadad"/><rect class="swatch" x="24" y="24" width="380" height="${height - 48}" fill="${masstone}"/>${rows}</svg>`),
    narrow: asMarkup(`<svg class="panel" viewBox="0 0 288 ${130 + tints.length * 60}" role="img" aria-label="Masstone beside its tints"><rect width="288" height="${130 + tints.length * 60}" fill="#adadad"/><rect class="swatch" x="12" y="12" width="264" height="92" fill="${masstone}"/>${narrowRows}</svg>`),
    caption: "Masstone, and tints at L* 70, 50 and 30 in titanium white (above) and lead white (below), on neutral N 7.",
  };
}

export function plot(title: string): PictureView {
  return {
    svg: asMarkup(`<svg class="plot" viewBox="0 0 560 220" role="img" aria-label="${title}"><path class="plot__axis" d="M40 10V190H550"/><path class="plot__line" d="M40 180C160 170 240 150 550 60" fill="none"/><text class="plot__label" x="40" y="212">400</text><text class="plot__label" x="520" y="212">700 nm</text></svg>`),
    caption: title,
  };
}
