/** Observer [degree] from a file's words: "2", "10 degree", "2_Degree"; undefined for any other. */
export function foundObserver(words: string): 2 | 10 | undefined {
  const degrees = /^\s*(2|10)(?![\d.])/.exec(words)?.[1];
  return degrees === undefined ? undefined : degrees === "2" ? 2 : 10;
}
