import { given } from "../quantities/given.ts";
import { keysOf } from "../quantities/members.ts";
import { handbookEstimate } from "../formulation/handbook-estimate.ts";
import { HUE_FAMILIES, type HueFamily } from "../knowledge/hue-family.ts";
import type { PigmentKnowledge } from "../knowledge/pigment-knowledge.ts";
import type { EvidencedRow } from "../knowledge/loaded-table.ts";
import { isInterval } from "../quantities/interval.ts";
import type { FoldBlock, LineView } from "../blocks/block.ts";
import { statement } from "../blocks/section-blocks.ts";
import { statementText } from "../present/statement-text.ts";
import { sensitivityRulings } from "../permanence/sensitivity.ts";
import { quantityText } from "../words/number-text.ts";
import type { Words } from "../words/words.ts";
import { unitText } from "../present/figure-text.ts";
import { sourceLink, type PageContext, type PagePlace } from "./page-context.ts";

type Fact = keyof Words["pages"]["pigmentIndex"]["facts"];
type KnownContext = Pick<PageContext, "records" | "words">;

/** Every name of pigments.csv that counts among a family, as a fold of what is known of it. */
export function knownPigments(
  context: KnownContext,
  place: Pick<PagePlace, "root">,
): ReadonlyMap<HueFamily, readonly FoldBlock[]> {
  const { knowledge, pigments } = context.records;
  const own = new Set([...pigments.values()].map(({ record }) => record.colourIndexName));
  const folds = knowledge.names.map((name) => {
    const known = knowledge.pigment(name);
    return [known.family, fold(name, known, own, context, place)] as const;
  });
  return new Map(
    HUE_FAMILIES.map((family) => [
      family,
      folds.flatMap(([of, each]) => (of === family ? [each] : [])),
    ]),
  );
}

function fold(
  name: string,
  known: PigmentKnowledge,
  own: ReadonlySet<string | undefined>,
  context: KnownContext,
  place: Pick<PagePlace, "root">,
): FoldBlock {
  const text = context.words.pages.pigmentIndex;
  const called = known.identity?.name;
  const lines = factLines(name, known, context, place);
  const missing = keysOf(text.missing).filter((fact) => !lines.some(([of]) => of === fact));
  const remark = text.notStated(missing.map((fact) => text.missing[fact]));
  const told = given([
    ...lines.map(([, line]) => line),
    missing.length > 0 && { name: "", sentences: [{ text: remark }] },
  ]);
  return {
    kind: "fold",
    summary: given([
      name,
      called !== undefined && context.words.substance(called),
      own.has(name) && text.ownOne,
    ]).join(" \u00b7 "),
    blocks: [
      lines.length === 0 ? statement(text.nothing) : { kind: "lines", isDense: true, lines: told },
    ],
  };
}

function factLines(
  name: string,
  { identity, rows, commonNames, drying: inOil }: PigmentKnowledge,
  context: KnownContext,
  place: Pick<PagePlace, "root">,
): (readonly [Fact, LineView])[] {
  const { words } = context;
  const texts = words.pages.pigmentIndex;
  const named = sourceLink(context, place);
  const sources = (evidence: readonly EvidencedRow[]): string =>
    [...new Set(evidence.map(told))].join(words.semicolon);
  /** A sentence of what is known, with its sources; none of what is not. */
  const known = (text: string | undefined, ...evidence: readonly (EvidencedRow | undefined)[]) =>
    text === undefined
      ? []
      : [texts.sourced(text, sources(evidence.filter((one) => one !== undefined)))];
  /** A text, and how what it says was come by. */
  const told = ({ source, standing }: EvidencedRow): string => {
    const { text } = named(source);
    if (standing === "derived") return texts.workedOut(text);
    if (standing !== "memory") return text;
    const isRecalled = context.records.sources.get(source)?.standing === "memory";
    return isRecalled ? texts.memory : texts.recalled(text);
  };
  const quantity = (found: PigmentKnowledge["rows"]["densities"], unit: string): string[] => {
    const estimate = handbookEstimate(found, { colourIndexName: name })?.estimate;
    if (estimate === undefined) return [];
    const digits = isInterval(estimate) ? 2 : 3;
    const value = quantityText(
      estimate,
      (each) => words.numbers.significant(each, digits),
      words.about,
    );
    return known(`${value}\u00a0${unitText(unit, words)}`, ...found);
  };
  const drying = rows.chemistries[0];
  const [lightfastness] = rows.lightfastness;
  const [opacity] = rows.opacities;
  const [dust] = rows.dustNatures;
  const harms = sensitivityRulings([
    {
      name: identity?.name === undefined ? name : words.substance(identity.name),
      sensitivities: rows.sensitivities,
    },
  ]);
  const listed = (list: readonly string[]): string | undefined =>
    list.length === 0 ? undefined : list.join(", ");
  const facts: readonly (readonly [Fact, readonly string[]])[] = [
    [
      "chemistry",
      known(
        identity?.class &&
          [identity.class, identity.formula]
            .flatMap((part) => (part === undefined ? [] : words.substance(part)))
            .join(", "),
        identity,
      ),
    ],
    [
      "alsoCalled",
      known(listed(commonNames.map((one) => words.substance(one.name))), ...commonNames),
    ],
    [
      "metals",
      known(
        listed(rows.metalsByColourIndex.map(({ metal }) => words.factWords[metal] ?? metal)),
        ...rows.metalsByColourIndex,
      ),
    ],
    ["mineral", known(identity?.mineral && words.substance(identity.mineral), identity)],
    ["year", known(identity?.year?.toString(), identity)],
    ["density", quantity(rows.densities, "g/cm3")],
    ["oilAbsorption", quantity(rows.oilAbsorptions, "g/100 g")],
    [
      "drying",
      known(
        drying &&
          inOil &&
          texts.drying(
            drying.chemistry,
            inOil.effect,
            `${quantityText(inOil.daysInLinseed, words.numbers.days, words.about)}\u00a0${unitText("d", words)}`,
          ),
        drying,
      ),
    ],
    [
      "lightfastness",
      known(
        lightfastness && texts.light(lightfastness),
        lightfastness,
        lightfastness?.tintSource === undefined
          ? undefined
          : { source: lightfastness.tintSource, standing: "published" },
      ),
    ],
    ["opacity", known(opacity && (words.terms[opacity.opacity] ?? opacity.opacity), opacity)],
    [
      "sensitivities",
      harms.map(
        ({ row, reason }) =>
          `${statementText(reason, words).replace(/\.$/, "")} (${sources([row as EvidencedRow & typeof row])}).`,
      ),
    ],
    ["dust", known(dust && texts.dust(dust.nature), dust)],
  ];
  return facts
    .filter(([, sentences]) => sentences.length > 0)
    .map(([fact, sentences]) => [
      fact,
      {
        name: `${texts.facts[fact]}${words.colon}`,
        sentences: sentences.map((text) => ({ text })),
      },
    ]);
}
