import type { FoundViewing } from "./reading-column.ts";

/** Viewing conditions as far as a file's words tell them; "" and undefined are no words. */
export function foundViewing(
  illuminant: string | undefined,
  observer: string | undefined,
): FoundViewing {
  const degrees = foundObserver(observer ?? "");
  return {
    ...(illuminant ? { illuminant } : {}),
    ...(degrees !== undefined && { observer: degrees }),
  };
}

/** Observer [degree] from a file's words: "2", "10 degree", "2_Degree"; undefined for any other. */
export function foundObserver(words: string): 2 | 10 | undefined {
  const degrees = /^\s*(2|10)(?![\d.])/.exec(words)?.[1];
  return degrees === undefined ? undefined : degrees === "2" ? 2 : 10;
}
