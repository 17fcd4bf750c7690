import { PARTS, type PartId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import { CONTROL_OF } from '../facts/controls.ts';
import type { Utterance } from '../utterance.ts';
import { isTellingMore, type Reads } from './reads.ts';
import { spokenOfLast } from './spoken-last.ts';

/** What is called "the control" once it was named. */
const CONTROLS: ReadonlySet<PartId | null> = new Set<PartId | null>([
  ...(['highPressureSwitch', 'lowPressureSwitch', 'oilPressureControl', 'fanControl'] as const),
  ...(['temperatureControl', 'controller', 'binControl'] as const),
]);

const OTHER_BEFORE =
  '(?<!\\b(?:pressure|temp|temperature|cold|fan|head|low|high|side|cycling|cycle|cycler|oil|limit|defrost|speed|ambient|safety|capacity|humidity|flow|level|bin|room|box|door|ice|water|float|under|out of|in|pest|quality|remote|motor|electronic|digital) )';
const OTHER_BEHIND =
  '(?! (?:board|boards|box|panel|wire|wires|wiring|circuit|voltage|volts|power|transformer|fuse|relay|module|knob|dial|head|valve|side|for|of))';
/** The word alone, which may be of any of them. */
const BARE = new RegExp(`${OTHER_BEFORE}\\bcontrol('s)?\\b${OTHER_BEHIND}`, 'i');

/** Boxes that one thermostat runs and no pressure control that anybody sets. */
const SELF_CONTAINED: ReadonlySet<Context['equipment']> = new Set<Context['equipment']>([
  ...(['reachIn', 'prepTable'] as const),
]);

/** "Nothing out of the control. Control's bad. Swapped the control.": of the one that was spoken of, else of the only one. */
export function ofTheControl(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { text } = said;
  const { lastQuantity } = context;
  if (!BARE.test(text)) return null;
  const last = spokenOfLast(context);
  const set = lastQuantity === null ? undefined : CONTROL_OF[lastQuantity];
  const only = SELF_CONTAINED.has(context.equipment) ? 'temperatureControl' : null;
  const part = CONTROLS.has(last) ? last : (set ?? only);
  if (part === null) return null;
  const again = reads(text.replace(BARE, `${PARTS[part]}$1`), context);
  return isTellingMore(again, said) ? { ...again, text } : null;
}
