import { keysOf } from "../quantities/members.ts";
import { handbookEstimate } from "../formulation/handbook-estimate.ts";
import type { RowStanding } from "../knowledge/cells.ts";
import { HUE_FAMILIES, type HueFamily } from "../knowledge/hue-family.ts";
import type { PigmentKnowledge } from "../knowledge/pigment-knowledge.ts";
import { isInterval } from "../quantities/interval.ts";
import type { Block, FoldBlock, LineView } from "../blocks/block.ts";
import { statementText } from "../present/statement-text.ts";
import { sensitivityRulings } from "../permanence/sensitivity.ts";
import { quantityText } from "../words/number-text.ts";
import type { Words } from "../words/words.ts";
import { unitText } from "../present/figure-text.ts";
import { sourceLink, type PageContext, type PagePlace } from "./page-context.ts";

type Fact = keyof Words["pages"]["pigmentIndex"]["facts"];
type KnownContext = Pick<PageContext, "records" | "words">;
type Evidenced = { readonly source: string; readonly standing: RowStanding };

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
  const lines = factLines(name, known, context, place);
  const missing = keysOf(text.missing).filter((fact) => !lines.some(([of]) => of === fact));
  const blocks: Block[] =
    lines.length === 0
      ? [{ kind: "statement", role: "body", text: text.nothing }]
      : [
          {
            kind: "lines",
            isDense: true,
            lines: [
              ...lines.map(([, line]) => line),
              ...(missing.length === 0
                ? []
                : [
                    {
                      name: "",
                      sentences: [
                        { text: text.notStated(missing.map((fact) => text.missing[fact])) },
                      ],
                    },
                  ]),
            ],
          },
        ];
  return {
    kind: "fold",
    summary: text.summary(name, known.identity?.name, own.has(name)),
    blocks,
  };
}

function factLines(
  name: string,
  known: PigmentKnowledge,
  context: KnownContext,
  place: Pick<PagePlace, "root">,
): (readonly [Fact, LineView])[] {
  const { identity, rows, drying: inOil } = known;
  const { words } = context;
  const texts = words.pages.pigmentIndex;
  const named = sourceLink(context, place);
  const line = (
    fact: Fact,
    text: string | undefined,
    evidence: readonly Evidenced[],
  ): (readonly [Fact, LineView])[] =>
    text === undefined
      ? []
      : [
          [
            fact,
            {
              name: `${texts.facts[fact]}${words.colon}`,
              sentences: [{ text: texts.sourced(text, sources(evidence)) }],
            },
          ],
        ];
  const sources = (evidence: readonly Evidenced[]): string =>
    [...new Set(evidence.map(told))].join(words.semicolon);
  /** A text, and how what it says was come by. */
  const told = ({ source, standing }: Evidenced): string => {
    const { text } = named(source);
    if (standing === "derived") return texts.workedOut(text);
    if (standing !== "memory") return text;
    const isRecalled = context.records.sources.get(source)?.standing === "memory";
    return isRecalled ? texts.memory : texts.recalled(text);
  };
  const quantity = (
    fact: Fact,
    found: PigmentKnowledge["rows"]["densities"],
    unit: string,
  ): (readonly [Fact, LineView])[] => {
    const estimate = handbookEstimate(found, { colourIndexName: name })?.estimate;
    return estimate === undefined
      ? []
      : line(
          fact,
          `${quantityText(estimate, (each) => words.numbers.significant(each, isInterval(estimate) ? 2 : 3), words.about)}\u00a0${unitText(unit, words)}`,
          found,
        );
  };
  const drying = rows.chemistries[0];
  const [lightfastness] = rows.lightfastness;
  const [opacity] = rows.opacities;
  const [dust] = rows.dustNatures;
  const harms = sensitivityRulings([
    { name: identity?.name ?? name, sensitivities: rows.sensitivities },
  ]);
  return [
    ...line(
      "chemistry",
      identity?.class === undefined
        ? undefined
        : [identity.class, identity.formula]
            .flatMap((part) => (part === undefined ? [] : words.substance(part)))
            .join(", "),
      identity === undefined ? [] : [identity],
    ),
    ...line(
      "alsoCalled",
      known.commonNames.length === 0
        ? undefined
        : known.commonNames.map(({ name: one }) => words.substance(one)).join(", "),
      known.commonNames,
    ),
    ...line(
      "metals",
      rows.metalsByColourIndex.length === 0
        ? undefined
        : rows.metalsByColourIndex.map(({ metal }) => words.factWords[metal] ?? metal).join(", "),
      rows.metalsByColourIndex,
    ),
    ...line(
      "mineral",
      identity?.mineral && words.substance(identity.mineral),
      identity === undefined ? [] : [identity],
    ),
    ...line(
      "year",
      identity?.year === undefined ? undefined : String(identity.year),
      identity === undefined ? [] : [identity],
    ),
    ...quantity("density", rows.densities, "g/cm3"),
    ...quantity("oilAbsorption", rows.oilAbsorptions, "g/100 g"),
    ...line(
      "drying",
      drying === undefined || inOil === undefined
        ? undefined
        : texts.drying(
            drying.chemistry,
            inOil.effect,
            `${quantityText(inOil.daysInLinseed, words.numbers.days, words.about)}\u00a0${unitText("d", words)}`,
          ),
      drying === undefined ? [] : [drying],
    ),
    ...line(
      "lightfastness",
      lightfastness === undefined ? undefined : texts.light(lightfastness),
      lightfastness === undefined
        ? []
        : [
            lightfastness,
            ...(lightfastness.tintSource === undefined
              ? []
              : [{ source: lightfastness.tintSource, standing: "published" as const }]),
          ],
    ),
    ...line(
      "opacity",
      opacity && (words.terms[opacity.opacity] ?? opacity.opacity),
      opacity === undefined ? [] : [opacity],
    ),
    ...(harms.length === 0
      ? []
      : [
          [
            "sensitivities",
            {
              name: `${texts.facts.sensitivities}${words.colon}`,
              sentences: harms.map(({ row, reason }) => ({
                text: `${statementText(reason, words).replace(/\.$/, "")} (${sources([row as Evidenced & typeof row])}).`,
              })),
            },
          ] as const,
        ]),
    ...line(
      "dust",
      dust === undefined ? undefined : texts.dust(dust.nature),
      dust === undefined ? [] : [dust],
    ),
  ];
}
