import { namesNode } from './names-node.ts';
import { UNIT_NAMES } from './vocabulary/unit-names.ts';

/** A unit as spoken, its id or loose word under `unit`. */
export const UNIT = namesNode('unit', UNIT_NAMES);
