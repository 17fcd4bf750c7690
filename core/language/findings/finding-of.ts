import type { PartId } from '../../terms/names.ts';
import { wordBehind, wordsBehind } from '../words/clause-start.ts';
import { isScrewedOn, NAMES_WHAT_HAS_CAP } from '../words/caps.ts';
import { settledFan, TURNS } from '../words/fans.ts';
import { LETS_RUN, WORKS } from '../words/state-at.ts';
import type { Context } from '../context.ts';
import type { Frame, Means } from '../rule.ts';
import type { Finding } from '../utterance.ts';

/** What was found at a part; of an unnamed fan or coil, at the one that is meant. */
export function finding(part: PartId, told: Finding['state'], frame: Frame): Finding {
  const words = frame.wordsOf(frame.span);
  const state = stateSaid(part, told, { words, frame });
  const torn =
    part === 'door' && TEARS.test(words)
      ? 'doorGasket'
      : isUnnamedCoil(part, words) && HUMS.test(words)
        ? 'contactor'
        : lampOr(part, words);
  const coil = coilLastNear(coilThatIces(torn, { state, words }, frame.context), { words, frame });
  const settled = settledFan(coil, frame.context);
  return settled === 'fan'
    ? { part, state, unresolved: true, words }
    : { part: settled, state, words };
}

/** A breaker that kicked or blew has tripped; a valve with a coil is shut until that is energized, and again without. */
function stateSaid(
  part: PartId,
  told: Finding['state'],
  { words, frame }: { readonly words: string; readonly frame: Frame },
): Finding['state'] {
  // A compressor that only hums stands still; one that hums along runs.
  if (part === 'compressor' && told === 'noisy' && HUMS.test(words) && !CHATTERS.test(words))
    return RUNS.test(wordBehind(frame)) ? 'running' : 'humming';
  if (part === 'breaker' && told === 'failed' && BLEW.test(words)) return 'tripped';
  // "Fans dropped out": what turns is let go by what opened.
  if (told === 'open' && TURNS.includes(part) && DROPPED.test(words)) return 'notRunning';
  if (told === 'missing' && GONE.test(words) && (WORKS.includes(part) || LETS_RUN.has(part)))
    return 'failed';
  if (!SHUT_WITHOUT.includes(part) || !ENERGIZED.test(words)) return told;
  return told === 'open' ? 'closed' : told === 'closed' ? 'open' : told;
}
const DROPPED = /\bdropped out$/i;
const BLEW = /\b(?:kick\w*|blew|blow[ns]?|blowing|popp?\w*)\b/i;
const SHUT_WITHOUT: readonly PartId[] = ['liquidLineSolenoid', 'hotGasValve', 'waterValve'];
const ENERGIZED = /\b(?:energi[sz]ed|pull(?:ed|ing)? in|dropped out)$/i;
/** "One heater's gone": of what is wired in, nobody took it away. */
const GONE = /\bgone$/i;

const CHATTERS = /\bchatter\w*$/i;
const RUNS = /^(?:along|nice|nicely|fine|away|good)$/i;

/** "Middle door torn": what tears at a door is its gasket. */
const TEARS = /\bdoors? (?:\w+ )*(?:torn|tore|ripped)(?: up)?$/i;

/** Of coils only those that pull something in hum, and a contactor's is the one that is called so. */
const HUMS = /\b(?:buzz|hum|chatter)\w*$/i;

/** An unnamed coil is the condenser's, but the one that ices is the evaporator's, and what is clear in a case is the one that iced. */
function coilThatIces(
  part: PartId,
  { state, words }: Pick<Finding, 'state' | 'words'>,
  { equipment }: Context,
): PartId {
  const isUnnamed = part === 'condenser' && !/cond|outdoor/i.test(words);
  const isIce = state === 'iced' || /\bice\b/i.test(words);
  const isCases = equipment === 'displayCase' && state === 'ok' && /\bcoil/i.test(words);
  return isUnnamed && (isIce || isCases) ? 'evaporator' : part;
}

/** "Bulb's out": what no longer shines; one that senses comes loose. */
const lampOr = (part: PartId, words: string): PartId =>
  part === 'expansionValveBulb' && !SENSES.test(words) && WENT_OUT.test(words) ? 'light' : part;
const SENSES = /\b(?:txv|t x v|sensing|valve|remote|stat|thermostat)\b/i;
const WENT_OUT = /\b(?:out|burnt|burned|blown|blew|dead|flickers?|flickering|busted)\b/i;

const EVAPORATOR: readonly (PartId | null)[] = [
  ...(['evaporator', 'evaporatorFan', 'evaporatorFanMotor', 'defrostHeater'] as const),
  ...(['drainPan', 'drainLine', 'drainHeater', 'defrostTermination'] as const),
];

/** Behind the evaporator's fans "the coil" is the evaporator. */
function coilLastNear(
  part: PartId,
  { words, frame }: { readonly words: string; readonly frame: Frame },
): PartId {
  return isUnnamedCoil(part, words) && EVAPORATOR.includes(frame.context.lastPart)
    ? 'evaporator'
    : part;
}

/** The same of a part that was named in the same breath. */
export function coilBehind(before: PartId | null, { part, state, words }: Finding): PartId {
  if (before === null || !isUnnamedCoil(part, words)) return part;
  if (
    PULLED_IN.includes(before) &&
    (OF_A_WIRE.includes(state) || (VALVES.includes(before) && PASSES.test(words)))
  )
    return before;
  return EVAPORATOR.includes(before) ? 'evaporator' : part;
}
/** "Contactor's chattering, coil's cooking": no condenser burns. */
const OF_A_WIRE: readonly Finding['state'][] = ['hot', 'burnt', 'open', 'failed', 'grounded'];

/** What is tested so is wound; what is clean or clear is a coil of pipes. */
const PASSES = /\b(?:good|ok|okay|fine)$/i;

const VALVES: readonly PartId[] = ['hotGasValve', 'liquidLineSolenoid', 'waterValve'];

/** What is pulled in by a coil of its own, which is changed without the rest. */
const PULLED_IN: readonly (PartId | null)[] = [
  ...(['hotGasValve', 'liquidLineSolenoid', 'contactor', 'waterValve', 'startRelay'] as const),
];

/**
 * "Swapped the coil", behind a solenoid valve: the valve's, since no condenser is swapped as "the coil". A bulb that is
 * changed by itself is a lamp's.
 */
export function partSwapped(part: PartId, frame: Frame): PartId {
  const { lastPart } = frame.context;
  const words = frame.wordsOf(frame.span);
  const isValves =
    SENSES.test(`${words} ${wordsBehind(frame, 4)}`) || lastPart === 'expansionValve';
  if (part === 'expansionValveBulb' && !isValves) return 'light';
  const before = frame.wordsOf({ from: 0, to: frame.span.from });
  if (isScrewedOn(part, words) && NAMES_WHAT_HAS_CAP.test(before)) return 'caps';
  return isUnnamedCoil(part, words) && lastPart !== null && PULLED_IN.includes(lastPart)
    ? lastPart
    : part;
}

export const ofEvaporator = (part: PartId | null): boolean => EVAPORATOR.includes(part);

export const isUnnamedCoil = (part: PartId | null, words: string): boolean =>
  part === 'condenser' && !/cond|outdoor/i.test(words) && /\bcoils?\b/i.test(words);

/** What only one part of the unit does, so that it need not be named. */
export const onlyOf =
  (part: PartId, state: Finding['state']): Means =>
  (_tags, frame) => ({ findings: [finding(part, state, frame)] });
