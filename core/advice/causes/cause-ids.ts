import { CAUSES, type CauseId } from '../../terms/causes.ts';

const isCause = (id: string): id is CauseId => id in CAUSES;

/** In the order of the closed set: equal shares keep it. */
export const CAUSE_IDS: readonly CauseId[] = Object.keys(CAUSES).filter(isCause);
