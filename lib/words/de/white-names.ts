/** "titanium" of "titanium white", "Titan-" of "Titanweiß": before another white that says the rest. */
export function withoutWhite(name: string): string {
  return name.replace(/^(\S+) white$/i, "$1").replace(/^(\p{L}+)wei(?:ß|ss)$/iu, "$1-");
}
