/** What a finger finds of a drying film, in the order in which it comes. */
export const TOUCHES = ["wet", "tacky", "touch dry", "through dry"] as const;
export type Touch = (typeof TOUCHES)[number];
