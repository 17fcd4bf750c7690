import { PARTS, type PartId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import type { Utterance } from '../utterance.ts';
import { MOTOR_OF } from '../words/fans.ts';
import { isTellingMore, type Reads } from './reads.ts';
import { spokenOfLast } from './spoken-last.ts';

/** Spoken of between a fan and its motor: what is on it, and what its power comes through. */
const OF_FAN: ReadonlySet<PartId | null> = new Set<PartId | null>([
  ...([null, 'fan', 'fanBlade', 'motorMount', 'runCapacitor', 'condenser', 'evaporator'] as const),
  ...(['disconnect', 'breaker'] as const),
]);

/** Whose motor it is, or what of it: of these the word says something by itself. */
const OTHER_BEFORE =
  '(?<!\\b(?:fan|fans|blower|evap|evaporator|condenser|condensing|cond|outdoor|indoor|box|cooler|compressor|pump|gear|auger|timer|clock|defrost|damper|door|drive|drain|stirrer|agitator|actuator|vent|hood|water|valve|servo|stepper|shaded pole) )';
const OTHER_BEHIND =
  '(?! (?:mount|mounts|bracket|brackets|cap|caps|capacitor|overload|windings?|leads?|terminals?|pins?|to ground|starter|protector|room|side|compartment|oil|(?:for|of|on|in) (?:the|this|that|my))\\b)';
/** The word alone, which may be of anything that turns. */
const BARE = new RegExp(`${OTHER_BEFORE}\\bmotor('s)?\\b${OTHER_BEHIND}`, 'i');
/** No compressor has one. */
const BLADE = /\bblades?\b/i;

/** "Condenser fan's dead. Motor's seized. Needs a new blade and motor.": of the fan that was spoken of, and of none unless one was. */
export function ofTheMotor(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { text } = said;
  if (!BARE.test(text)) return null;
  const name = motorSpokenOf(context) ?? (BLADE.test(text) ? 'fan motor' : null);
  if (name === null) return null;
  const again = reads(text.replace(BARE, `${name}$1`), context);
  return isTellingMore(again, said) ? { ...again, text } : null;
}

function motorSpokenOf(context: Context): string | null {
  const last = spokenOfLast(context);
  const fan = last !== null && last in MOTOR_OF ? last : OF_FAN.has(last) ? context.lastFan : null;
  const part = fan === null ? undefined : MOTOR_OF[fan];
  return part === undefined ? null : PARTS[part];
}
