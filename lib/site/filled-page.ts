import type { AnyPageView } from "./all-pages.ts";
import { textHash } from "../kept/part-hashes.ts";
import type { SiteView } from "../present/views.ts";
import type { OwnTexts } from "../records/own-texts.ts";

/** What a page shows, and the frame that it shows it in. */
export interface FilledPage {
  readonly site: SiteView;
  readonly view: AnyPageView;
  /** Of a view that is held as text the hash of that. */
  readonly viewHash?: string;
}

/** The hash of what a page is filled with, the texts of another language that its template is to mark among it. */
export function viewKey(page: FilledPage): string {
  const { site, viewHash = hashOfView(JSON.stringify(page.view)) } = page;
  return textHash([JSON.stringify(site), viewHash, hashOfTexts(site.ownTexts)]);
}

/** @param text of a view as JSON. */
export function hashOfView(text: string): string {
  return textHash([text]);
}

const HASHES = new WeakMap<OwnTexts, string>();

/** One for all pages of a language. */
function hashOfTexts(texts: OwnTexts): string {
  const hash = HASHES.get(texts) ?? textHash([JSON.stringify([...texts])]);
  HASHES.set(texts, hash);
  return hash;
}
