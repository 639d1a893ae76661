import { grouped } from "../quantities/grouped.ts";
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

/** A fact, what is known of it without its full stop, and the rows that it rests on. */
type Told = readonly [
  fact: Fact,
  text: string | undefined,
  ...rows: readonly (EvidencedRow | undefined)[],
];

/** What is known, a line a fact, each sentence with its sources. */
function factLines(
  name: string,
  known: PigmentKnowledge,
  context: KnownContext,
  place: Pick<PagePlace, "root">,
): (readonly [Fact, LineView])[] {
  const { words } = context;
  const { facts, sourced } = words.pages.pigmentIndex;
  const cited = citing(context, place);
  const sentences = toldFacts(name, known, words).flatMap(([fact, text, ...rows]) =>
    text === undefined ? [] : [[fact, { text: sourced(text, cited(given(rows))) }] as const],
  );
  return [...grouped(sentences)].map(([fact, own]) => [
    fact,
    { name: `${facts[fact]}${words.colon}`, sentences: own },
  ]);
}

/** Sources of rows, each once, and how what they say was come by. */
function citing(
  context: KnownContext,
  place: Pick<PagePlace, "root">,
): (rows: readonly EvidencedRow[]) => string {
  const { words, records } = context;
  const texts = words.pages.pigmentIndex;
  const named = sourceLink(context, place);
  const cited = ({ source, standing }: EvidencedRow): string => {
    const { text } = named(source);
    if (standing === "derived") return texts.workedOut(text);
    if (standing !== "memory") return text;
    return records.sources.get(source)?.standing === "memory" ? texts.memory : texts.recalled(text);
  };
  return (rows) => [...new Set(rows.map(cited))].join(words.semicolon);
}

function toldFacts(
  name: string,
  { identity, rows, commonNames, drying: inOil }: PigmentKnowledge,
  words: Words,
): readonly Told[] {
  const texts = words.pages.pigmentIndex;
  const listed = (list: readonly string[]): string | undefined =>
    list.length === 0 ? undefined : list.join(", ");
  const quantity = (found: PigmentKnowledge["rows"]["densities"], unit: string) => {
    const estimate = handbookEstimate(found, { colourIndexName: name })?.estimate;
    const digits = isInterval(estimate) ? 2 : 3;
    return (
      estimate &&
      `${quantityText(estimate, (each) => words.numbers.significant(each, digits), words.about)}\u00a0${unitText(unit, words)}`
    );
  };
  const [drying] = rows.chemistries;
  const [lightfastness] = rows.lightfastness;
  const [opacity] = rows.opacities;
  const [dust] = rows.dustNatures;
  const harms = sensitivityRulings([
    {
      name: identity?.name === undefined ? name : words.substance(identity.name),
      sensitivities: rows.sensitivities,
    },
  ]);
  return [
    [
      "chemistry",
      identity?.class &&
        given([identity.class, identity.formula])
          .map((part) => words.substance(part))
          .join(", "),
      identity,
    ],
    ["alsoCalled", listed(commonNames.map((one) => words.substance(one.name))), ...commonNames],
    [
      "metals",
      listed(rows.metalsByColourIndex.map(({ metal }) => words.factWords[metal] ?? metal)),
      ...rows.metalsByColourIndex,
    ],
    ["mineral", identity?.mineral && words.substance(identity.mineral), identity],
    ["year", identity?.year?.toString(), identity],
    ["density", quantity(rows.densities, "g/cm3"), ...rows.densities],
    ["oilAbsorption", quantity(rows.oilAbsorptions, "g/100 g"), ...rows.oilAbsorptions],
    [
      "drying",
      drying &&
        inOil &&
        texts.drying(
          drying.chemistry,
          inOil.effect,
          `${quantityText(inOil.daysInLinseed, words.numbers.days, words.about)}\u00a0${unitText("d", words)}`,
        ),
      drying,
    ],
    [
      "lightfastness",
      lightfastness && texts.light(lightfastness),
      lightfastness,
      lightfastness?.tintSource === undefined
        ? undefined
        : { source: lightfastness.tintSource, standing: "published" },
    ],
    ["opacity", opacity && (words.terms[opacity.opacity] ?? opacity.opacity), opacity],
    ...harms.map(({ row, reason }): Told => [
      "sensitivities",
      statementText(reason, words).replace(/\.$/, ""),
      row as EvidencedRow & typeof row,
    ]),
    ["dust", dust && texts.dust(dust.nature), dust],
  ];
}
