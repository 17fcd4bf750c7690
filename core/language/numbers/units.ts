import { choice, named, type Node, sequence, tag, unheard, word } from '../../grammar/nodes.ts';
import { namesNode } from '../names/names-node.ts';
import { UNIT_NAMES } from '../vocabulary/unit-names.ts';

/** A unit said in words, its id or loose word under `unit`. */
export const WORDED_UNIT = namesNode('unit', UNIT_NAMES);

/** "Forty c", but in "two ohms c to r" a terminal: behind a number it is a unit only where nothing else is. */
export const LETTER_C: Node = unheard(sequence(word('c'), tag({ unit: 'degC' })));

/** A unit as spoken or written. */
export const UNIT = named('unitOrLetter', choice(WORDED_UNIT, LETTER_C));
