import type { PaintColour } from "../blocks/block.ts";
import { BLEED_MM, TEXT_MIN_PT, type CardGeometry, type CardPlan } from "./card-plan.ts";
import { BLACK, GREY, inkOf, N6, shifted, WHITE, type Mark, type Tagged } from "./mark.ts";
import { fittedRuns, setRuns } from "./set-runs.ts";

/** The band of tints at the foot of the panel [mm, at a card of 90 x 55]. */
const BAND = { edge: 2.4, tint: 9, caption: 1, foot: 2.6 };
const CHIP_ARM_MM = 2;

/** The paint off three edges of the card, and at its foot the tints on N 6, abutting, with the white of each. */
export function cardPanel(plan: CardPlan, geometry: CardGeometry): Tagged[] {
  const { content, size, words } = plan;
  const { panelMm, heightMm, safeMm } = geometry;
  const text = words.pages.cards;
  const { masstone } = content;
  const band = tintBand(plan, geometry);
  const bottom = band.length === 0 ? heightMm + BLEED_MM : bandTop(geometry);
  const whole: Mark = {
    kind: "box",
    xMm: -BLEED_MM,
    yMm: -BLEED_MM,
    widthMm: panelMm + BLEED_MM,
    heightMm: heightMm + 2 * BLEED_MM,
    ink: N6,
  };
  const paint: Tagged =
    masstone === undefined
      ? {
          tag: "P",
          marks: setRuns([{ text: text.noColour, face: "sans" }], {
            widthMm: panelMm - 2 * safeMm,
            sizePt: TEXT_MIN_PT + 1,
          }).marks.map((mark) => shifted(mark, safeMm, safeMm)),
        }
      : {
          tag: "Figure",
          alt: text.masstone,
          marks: [
            {
              kind: "box",
              xMm: -BLEED_MM,
              yMm: -BLEED_MM,
              widthMm: panelMm + BLEED_MM,
              heightMm: bottom + BLEED_MM,
              ink: inkOf(masstone),
            },
          ],
        };
  return [
    { tag: "Artifact", marks: [whole] },
    paint,
    ...(masstone !== undefined && isPale(masstone) ? [edge(panelMm, heightMm)] : []),
    ...(masstone === undefined || content.masstoneNote === undefined
      ? []
      : [note(content.masstoneNote, masstone, geometry)]),
    ...(size.chip ? [chip(plan, geometry, Math.min(bottom, heightMm - safeMm))] : []),
    ...band,
  ];
}

/** L* from which a paint has no edge against the card [1]. */
const PALE_L = 88;

function isPale({ lab }: PaintColour): boolean {
  return lab !== undefined && lab.L > PALE_L && Math.hypot(lab.a, lab.b) < 15;
}

/** At the head of the paint, in black or white, whichever is read on it. */
function note(text: string, { lab }: PaintColour, { safeMm, panelMm }: CardGeometry): Tagged {
  const ink = lab === undefined || lab.L > 50 ? BLACK : WHITE;
  const set = setRuns([{ text, face: "sans", ink }], {
    widthMm: panelMm - 2 * safeMm,
    sizePt: TEXT_MIN_PT,
    isBalanced: true,
  });
  return { tag: "P", marks: set.marks.map((mark) => shifted(mark, safeMm, safeMm)) };
}

/** A hairline between a pale paint and the card. */
function edge(xMm: number, heightMm: number): Tagged {
  return {
    tag: "Artifact",
    marks: [
      {
        kind: "line",
        fromMm: [xMm, -BLEED_MM],
        toMm: [xMm, heightMm + BLEED_MM],
        widthPt: 0.35,
        ink: { grey: 0.6 },
      },
    ],
  };
}

function bandTop({ heightMm, safeMm, type }: CardGeometry): number {
  const caption = TEXT_MIN_PT * type * 0.46 + BAND.caption;
  return heightMm - Math.min(safeMm, BAND.foot) - caption - (BAND.tint + BAND.edge) * type;
}

function tintBand({ content: { tints } }: CardPlan, geometry: CardGeometry): Tagged[] {
  const { safeMm, panelMm, heightMm, type } = geometry;
  const top = bandTop(geometry) + BAND.edge * type;
  // A band that would take more than half of the card is none.
  if (tints.length === 0 || bandTop(geometry) < heightMm * 0.5) return [];
  const each = (panelMm - safeMm - BAND.edge) / tints.length;
  return tints.flatMap(({ colour, white, caption }, i): Tagged[] => {
    const xMm = safeMm + i * each;
    const yMm = top + BAND.tint * type + BAND.caption - 0.4;
    const name = fittedRuns(
      [{ text: white, face: "sans" }],
      1,
      [Math.max(TEXT_MIN_PT, TEXT_MIN_PT * type), TEXT_MIN_PT],
      {
        widthMm: each - 0.6,
        leading: 1.05,
      },
    );
    const swatch: Mark = {
      kind: "box",
      xMm,
      yMm: top,
      widthMm: each,
      heightMm: BAND.tint * type,
      ink: inkOf(colour),
    };
    return [
      { tag: "Figure", alt: caption, marks: [swatch] },
      // What the band has no room for is said in place of the swatch.
      ...(name.lines.length > 1
        ? []
        : [{ tag: "P", marks: name.marks.map((mark) => shifted(mark, xMm, yMm)) } as const]),
    ];
  });
}

/** White inside the paint, with marks at its corners: to be painted, or to have a painted chip stuck on, beside the printed colour. */
function chip(
  { words }: CardPlan,
  { safeMm, panelMm, type }: CardGeometry,
  bottomMm: number,
): Tagged {
  const widthMm = panelMm - 2 * safeMm;
  const heightMm = Math.min(16 * type, (bottomMm - safeMm) * 0.6);
  const [xMm, yMm] = [safeMm, bottomMm - safeMm - heightMm];
  const corner = (x: number, y: number, dx: number, dy: number): Mark[] =>
    (
      [
        [dx, 0],
        [0, dy],
      ] as const
    ).map(([ax, ay]) => ({
      kind: "line",
      fromMm: [x, y],
      toMm: [x + ax * CHIP_ARM_MM, y + ay * CHIP_ARM_MM],
      widthPt: 0.5,
      ink: BLACK,
    }));
  const caption = setRuns([{ text: words.pages.cards.chip, face: "sans", ink: GREY }], {
    widthMm,
    sizePt: TEXT_MIN_PT,
    align: "centre",
  });
  return {
    tag: "P",
    marks: [
      { kind: "box", xMm, yMm, widthMm, heightMm, ink: WHITE },
      ...corner(xMm + 1, yMm + 1, 1, 1),
      ...corner(xMm + widthMm - 1, yMm + 1, -1, 1),
      ...corner(xMm + widthMm - 1, yMm + heightMm - 1, -1, -1),
      ...corner(xMm + 1, yMm + heightMm - 1, 1, -1),
      ...caption.marks.map((mark) => shifted(mark, xMm, yMm + heightMm - caption.heightMm - 1.4)),
    ],
  };
}
