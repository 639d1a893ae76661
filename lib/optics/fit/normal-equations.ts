import { at } from "../../quantities/at.ts";
/**
 * Normal equations of a least-squares step with one shared unknown and one more
 * for each of several groups, every observation touching the shared one and at
 * most one group: an arrow matrix, solved by elimination in the order of groups.
 * Held in place and filled again at every step, since a fit takes thousands.
 */
export interface ArrowSystem {
  shared: number;
  sharedGradient: number;
  /** Shape (groups) each: own curvature, coupling to the shared unknown, gradient. */
  readonly own: Float64Array;
  readonly coupling: Float64Array;
  readonly gradient: Float64Array;
}

export function arrowSystem(groups: number): ArrowSystem {
  return {
    shared: 0,
    sharedGradient: 0,
    own: new Float64Array(groups),
    coupling: new Float64Array(groups),
    gradient: new Float64Array(groups),
  };
}

export function clearSystem(system: ArrowSystem): void {
  system.shared = 0;
  system.sharedGradient = 0;
  for (let j = 0; j < system.own.length; j++) {
    system.own[j] = 0;
    system.coupling[j] = 0;
    system.gradient[j] = 0;
  }
}

/**
 * Add one observation.
 * @param residual observed less computed, and its slopes by the shared unknown and
 *   by the group's own, all divided by the standard uncertainty.
 */
export function addObservation(
  system: ArrowSystem,
  group: number,
  residual: number,
  byShared: number,
  byOwn: number,
): void {
  addSharedObservation(system, residual, byShared);
  system.own[group] = at(system.own, group) + byOwn * byOwn;
  system.coupling[group] = at(system.coupling, group) + byOwn * byShared;
  system.gradient[group] = at(system.gradient, group) + byOwn * residual;
}

/** Add an observation that touches the shared unknown alone. */
export function addSharedObservation(
  system: ArrowSystem,
  residual: number,
  byShared: number,
): void {
  system.shared += byShared * byShared;
  system.sharedGradient += byShared * residual;
}

/** Curvature left to the shared unknown after the groups are eliminated: the inverse of its variance. */
export function sharedCurvature(system: ArrowSystem): number {
  const { own, coupling } = system;
  let curvature = system.shared;
  for (let j = 0; j < own.length; j++) {
    const shared = at(coupling, j);
    curvature -= (shared * shared) / at(own, j);
  }
  return curvature;
}

/** The step of the shared unknown. */
export function sharedStep(system: ArrowSystem): number {
  const { own, coupling, gradient } = system;
  let right = system.sharedGradient;
  for (let j = 0; j < own.length; j++) right -= (at(coupling, j) / at(own, j)) * at(gradient, j);
  return right / sharedCurvature(system);
}

/** The step of a group's own unknown, once the shared one has taken its own. */
export function ownStep(
  { own, coupling, gradient }: ArrowSystem,
  group: number,
  sharedTaken: number,
): number {
  return (at(gradient, group) - at(coupling, group) * sharedTaken) / at(own, group);
}
