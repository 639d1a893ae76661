export type {
  BatchSection,
  BatchSize,
  FillSection,
  Filling,
  OilSection,
} from "./oil/oil-figures.ts";
export type {
  ContributionFigure,
  DryingSection,
  TintDrying,
  TrialFigures,
} from "./drying/drying-figures.ts";
export type {
  FormFigures,
  PermanenceBasis,
  PermanenceSection,
} from "./permanence/permanence-figures.ts";
