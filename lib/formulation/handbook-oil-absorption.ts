/**
 * Oil absorption of pigments by rub-out [g oil/100 g pigment], to stand in where
 * a record is silent and to hold a record against.
 */
import type { HandbookRow } from "./handbook-estimate.ts";

const READ = "gettens-stout-1942";
const RECALLED = "memory-formulation";

export const HANDBOOK_OIL_ABSORPTION_G_PER_100G: readonly HandbookRow[] = [
  { kind: "basic lead carbonate", colourIndexNames: ["PW 1"], figure: [9, 12], source: READ },
  { kind: "lamp black", colourIndexNames: ["PBk 6"], figure: [50, 120], source: RECALLED },
  { kind: "carbon black", colourIndexNames: ["PBk 7"], figure: [80, 200], source: RECALLED },
  { kind: "bone black", colourIndexNames: ["PBk 9"], figure: [40, 60], source: RECALLED },
  { kind: "black iron oxide", colourIndexNames: ["PBk 11"], figure: [15, 30], source: RECALLED },
  {
    kind: "red iron oxide",
    colourIndexNames: ["PR 101", "PR 102"],
    figure: [15, 30],
    source: RECALLED,
  },
  {
    kind: "yellow iron oxide",
    colourIndexNames: ["PY 42", "PY 43"],
    figure: [30, 60],
    source: RECALLED,
  },
  { kind: "raw umber", colourIndexNames: ["PBr 7"], figure: [35, 60], source: RECALLED },
  { kind: "burnt umber", colourIndexNames: ["PBr 7"], figure: [35, 60], source: RECALLED },
  { kind: "raw sienna", colourIndexNames: ["PBr 7"], figure: [35, 60], source: RECALLED },
  { kind: "burnt sienna", colourIndexNames: ["PBr 7"], figure: [35, 60], source: RECALLED },
  { kind: "rutile", colourIndexNames: ["PW 6"], figure: [16, 24], source: RECALLED },
  { kind: "zinc oxide", colourIndexNames: ["PW 4"], figure: [12, 25], source: RECALLED },
  { kind: "ultramarine", colourIndexNames: ["PB 29"], figure: [25, 40], source: RECALLED },
  { kind: "cobalt blue", colourIndexNames: ["PB 28"], figure: [25, 40], source: RECALLED },
  { kind: "viridian", colourIndexNames: ["PG 18"], figure: [40, 70], source: RECALLED },
  { kind: "chromium oxide green", colourIndexNames: ["PG 17"], figure: [10, 20], source: RECALLED },
  {
    kind: "cadmium yellow",
    colourIndexNames: ["PY 35", "PY 37"],
    figure: [15, 25],
    source: RECALLED,
  },
  { kind: "cadmium red", colourIndexNames: ["PR 108"], figure: [15, 25], source: RECALLED },
  {
    kind: "phthalocyanine",
    colourIndexNames: ["PB 15", "PB 16"],
    figure: [35, 60],
    source: RECALLED,
  },
  {
    kind: "quinacridone",
    colourIndexNames: ["PV 19", "PR 122", "PR 202", "PR 206", "PR 207", "PR 209"],
    figure: [40, 70],
    source: RECALLED,
  },
  { kind: "Prussian blue", colourIndexNames: ["PB 27"], figure: [40, 75], source: RECALLED },
  { kind: "chalk", colourIndexNames: ["PW 18"], figure: [13, 22], source: RECALLED },
  { kind: "vermilion", colourIndexNames: ["PR 106"], figure: [8, 20], source: RECALLED },
  {
    kind: "halogenated phthalocyanine",
    colourIndexNames: ["PG 7", "PG 36"],
    figure: [25, 60],
    source: RECALLED,
  },
  {
    kind: "cerulean blue",
    colourIndexNames: ["PB 35", "PB 36"],
    figure: [15, 35],
    source: RECALLED,
  },
  {
    kind: "cobalt green",
    colourIndexNames: ["PG 19", "PG 50"],
    figure: [12, 30],
    source: RECALLED,
  },
  { kind: "green earth", colourIndexNames: ["PG 23"], figure: [30, 70], source: RECALLED },
  { kind: "ultramarine violet", colourIndexNames: ["PV 15"], figure: [25, 40], source: RECALLED },
  {
    kind: "copper chromite black",
    colourIndexNames: ["PBk 28"],
    figure: [10, 25],
    source: RECALLED,
  },
  {
    kind: "rutile titanate",
    colourIndexNames: ["PY 53", "PBr 24"],
    figure: [10, 22],
    source: RECALLED,
  },
  {
    kind: "perylene",
    colourIndexNames: ["PBk 31", "PBk 32", "PR 149", "PR 178", "PR 179"],
    figure: [30, 70],
    source: RECALLED,
  },
  { kind: "anthraquinone lake", colourIndexNames: ["PR 83"], figure: [40, 80], source: RECALLED },
  {
    kind: "barium sulphate",
    colourIndexNames: ["PW 21", "PW 22"],
    figure: [8, 25],
    source: RECALLED,
  },
];
