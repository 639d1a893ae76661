import { sentence } from "./phrases.ts";
import { judgedAlike, type InNamedWhite, type TintWords } from "./tint-words.ts";

/** What a colour does in its whites, in words alone: whites that do the same together, the strongest turn first. */
export function tintsInWords(tints: readonly InNamedWhite[], words: TintWords): string | undefined {
  const clauses = judgedAlike(tints, words.inWords).map(
    ([phrase, group]) => `${phrase} ${words.in} ${words.listed(shortened(group, words))}`,
  );
  return clauses.length === 0 ? undefined : sentence(clauses.join(", "));
}

/** "zinc" and, at the end, "titanium white"; where one name is of another form all stand whole. */
function shortened(tints: readonly InNamedWhite[], { shortWhite }: TintWords): string[] {
  const names = tints.map(({ white }) => white);
  const areAllShort = names.every((name) => shortWhite(name) !== name);
  return names.map((name, i) => (areAllShort && i < names.length - 1 ? shortWhite(name) : name));
}
