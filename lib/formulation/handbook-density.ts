/**
 * Densities of pigments [g/cm3], to stand in where a record is silent and to
 * hold a record against.
 */
import type { HandbookRow } from "./handbook-estimate.ts";

const READ = "gettens-stout-1942";
const RECALLED = "memory-formulation";

export const HANDBOOK_DENSITY_G_PER_CM3: readonly HandbookRow[] = [
  { kind: "bone black", colourIndexNames: ["PBk 9"], figure: 2.29, source: READ },
  { kind: "Prussian blue", colourIndexNames: ["PB 27"], figure: 1.83, source: READ },
  { kind: "raw sienna", colourIndexNames: ["PBr 7"], figure: 3.14, source: READ },
  { kind: "burnt sienna", colourIndexNames: ["PBr 7"], figure: 3.56, source: READ },
  { kind: "raw umber", colourIndexNames: ["PBr 7"], figure: 3.2, source: READ },
  { kind: "burnt umber", colourIndexNames: ["PBr 7"], figure: 3.64, source: READ },
  { kind: "ultramarine", colourIndexNames: ["PB 29"], figure: 2.34, source: READ },
  { kind: "viridian", colourIndexNames: ["PG 18"], figure: 3.32, source: READ },
  { kind: "basic lead carbonate", colourIndexNames: ["PW 1"], figure: 6.7, source: READ },
  { kind: "zinc oxide", colourIndexNames: ["PW 4"], figure: 5.65, source: READ },
  { kind: "rutile", colourIndexNames: ["PW 6"], figure: 4.2, source: READ },
  { kind: "anatase", colourIndexNames: ["PW 6"], figure: 3.9, source: READ },
  { kind: "vermilion", colourIndexNames: ["PR 106"], figure: 8.09, source: READ },
  { kind: "cadmium yellow", colourIndexNames: ["PY 35", "PY 37"], figure: 4.35, source: READ },
  { kind: "cadmium red", colourIndexNames: ["PR 108"], figure: 4.5, source: READ },
  { kind: "chalk", colourIndexNames: ["PW 18"], figure: 2.7, source: READ },
  { kind: "carbon black", colourIndexNames: ["PBk 7"], figure: [1.75, 1.95], source: RECALLED },
  { kind: "lamp black", colourIndexNames: ["PBk 6"], figure: [1.7, 1.8], source: RECALLED },
  { kind: "black iron oxide", colourIndexNames: ["PBk 11"], figure: [4.6, 4.9], source: RECALLED },
  { kind: "red iron oxide", colourIndexNames: ["PR 101"], figure: [4.5, 5.1], source: RECALLED },
  { kind: "yellow iron oxide", colourIndexNames: ["PY 42"], figure: [4.1, 4.3], source: RECALLED },
  {
    kind: "chromium oxide green",
    colourIndexNames: ["PG 17"],
    figure: [5.1, 5.2],
    source: RECALLED,
  },
  {
    kind: "phthalocyanine",
    colourIndexNames: ["PB 15", "PB 16"],
    figure: [1.5, 1.65],
    source: RECALLED,
  },
  {
    kind: "quinacridone",
    colourIndexNames: ["PV 19", "PR 122", "PR 202", "PR 206", "PR 207", "PR 209"],
    figure: [1.45, 1.55],
    source: RECALLED,
  },
  {
    kind: "halogenated phthalocyanine",
    colourIndexNames: ["PG 7", "PG 36"],
    figure: [1.9, 3],
    source: RECALLED,
  },
  { kind: "ochre", colourIndexNames: ["PY 43"], figure: [2.8, 4], source: RECALLED },
  { kind: "red earth", colourIndexNames: ["PR 102"], figure: [2.8, 4.8], source: RECALLED },
  { kind: "green earth", colourIndexNames: ["PG 23"], figure: [2.5, 2.9], source: RECALLED },
  { kind: "cobalt blue", colourIndexNames: ["PB 28"], figure: [3.8, 4.5], source: RECALLED },
  {
    kind: "cerulean blue",
    colourIndexNames: ["PB 35", "PB 36"],
    figure: [4, 5.2],
    source: RECALLED,
  },
  {
    kind: "cobalt green",
    colourIndexNames: ["PG 19", "PG 50"],
    figure: [4, 5.6],
    source: RECALLED,
  },
  { kind: "manganese violet", colourIndexNames: ["PV 16"], figure: [2.6, 2.9], source: RECALLED },
  { kind: "ultramarine violet", colourIndexNames: ["PV 15"], figure: [2.3, 2.4], source: RECALLED },
  {
    kind: "copper chromite black",
    colourIndexNames: ["PBk 28"],
    figure: [5, 5.6],
    source: RECALLED,
  },
  {
    kind: "rutile titanate",
    colourIndexNames: ["PY 53", "PBr 24"],
    figure: [4, 4.8],
    source: RECALLED,
  },
  {
    kind: "perylene",
    colourIndexNames: ["PBk 31", "PBk 32", "PR 149", "PR 178", "PR 179"],
    figure: [1.35, 1.6],
    source: RECALLED,
  },
  { kind: "anthraquinone lake", colourIndexNames: ["PR 83"], figure: [1.5, 2], source: RECALLED },
  { kind: "vine or wood black", colourIndexNames: ["PBk 8"], figure: [1.4, 1.9], source: RECALLED },
  { kind: "graphite", colourIndexNames: ["PBk 10"], figure: [2.1, 2.3], source: RECALLED },
  {
    kind: "barium sulphate",
    colourIndexNames: ["PW 21", "PW 22"],
    figure: [4.2, 4.5],
    source: RECALLED,
  },
];
