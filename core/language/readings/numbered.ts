import type { Tags } from '../../grammar/nodes.ts';
import { drawn, electrical } from '../electrical/electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn, withMore } from '../numbers/measure.ts';
import { asReading, fixed, leftToAsk, reading } from './reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { ohmsAt } from '../findings/some-of-them.ts';
import { finding } from '../findings/finding-of.ts';
import type { PartId } from '../../terms/names.ts';
import { numberIn, partId, placeId, quantityId, tagsIn } from '../slots.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Reading } from '../utterance.ts';

/** The sheet has one row for all of them: which one it was stands in the note as it was said. */
const withItsNumber = (meaning: Meaning | null, frame: Frame): Meaning | null =>
  meaning === null ? null : { ...meaning, remarks: [frame.wordsOf(frame.span)] };

/** Ours: compressors of this trade draw less, and a bare number above is a voltage. */
const MOST_AMPS = 100;

const AMPS = /\b(?:amps?|draw|draws|drawing|pull|pulls|pulling)\b|\da\b/i;

function ampsOf(tags: Tags | null, place: Reading['place'], frame: Frame): readonly Reading[] {
  if (tags === null) return [];
  const { unit, value } = amountIn(tags);
  const isAmps = unit === 'A' || (unit === null && value !== null && value < MOST_AMPS);
  const found = isAmps ? drawn({ ...tags, unit: 'A' }, place, frame) : null;
  return found === null ? [] : [found];
}

/** "Compressor two's pulling nineteen": a figure behind a motor's number, with a word between. */
const drawnByOne: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const { unit } = amountIn(tags);
  if (place === null || !SEVERAL.includes(place)) return null;
  if (unit !== null && unit !== 'A') {
    const found = electrical(tags, place, frame);
    return found === null ? null : withItsNumber({ readings: [found] }, frame);
  }
  if (unit === null && !AMPS.test(frame.wordsOf(frame.span))) return null;
  const readings = ampsOf(tags, place, frame);
  return readings.length === 0 ? leftToAsk(tags) : withItsNumber({ readings }, frame);
};
const SEVERAL: readonly Reading['place'][] = ['compressor', 'condenserFan', 'evaporatorFan'];

/** "Compressor two nineteen amps" is the second one at 19, or the only one at 219. */
const drawnByOneOrMore: Means = (tags, frame) => {
  const which = numberIn(tagsIn(tags['which'])?.['number']);
  const [found] = ampsOf(tags, 'compressor', frame);
  // "Compressor six point two amps"
  if (/\bcompressor \w+ point\b/i.test(frame.wordsOf(frame.span))) return null;
  if (found?.value === undefined || which === null || amountIn(tags).unit !== 'A') return null;
  const isTwoFigures = Number.isInteger(found.value) && found.value >= 10;
  const isWritten = /\d/.test(frame.wordsOf(frame.span));
  if (!isTwoFigures || isWritten) return withItsNumber({ readings: [found] }, frame);
  return { doubts: [withMore(found, { why: 'saidTwoWays', or: which * 100 + found.value })] };
};

/** "Evap fan one's at point six, two's at point six": each by its number, the motor named once. */
const drawnByNumber: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const said = [tagsIn(tags['one']), tagsIn(tags['two']), tagsIn(tags['three'])];
  const readings = said.flatMap((one) => (place === null ? [] : ampsOf(one, place, frame)));
  const words = frame.wordsOf(frame.span);
  const isAmps = AMPS.test(words) || /\bpoint\b|\d\.\d/i.test(words);
  return SEVERAL.includes(place) && isAmps && readings.length > 1
    ? withItsNumber({ readings }, frame)
    : null;
};

/** Each of several in turn: then the figure behind "compressor" counts them. */
const drawnByEach: Means = (tags, frame) => {
  const said = [tags, tagsIn(tags['two']), tagsIn(tags['three']), tagsIn(tags['four'])];
  const each = said.filter((one) => one !== null);
  const readings = each.flatMap((one) => ampsOf(one, 'compressor', frame));
  return readings.length === each.length && AMPS.test(frame.wordsOf(frame.span))
    ? withItsNumber({ readings }, frame)
    : null;
};

/** "Compressor three's off on overload": what let it go has tripped. */
const offOn: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const isSafety = part !== null && SAFETIES.includes(part);
  if (part !== null && !isSafety) return null;
  const words = frame.wordsOf(frame.span);
  const tripped = isSafety ? [finding(part, 'tripped', frame)] : [];
  return { findings: [...tripped, finding('compressor', 'notRunning', frame)], remarks: [words] };
};
const SAFETIES: readonly PartId[] = ['overload', 'highPressureSwitch', 'lowPressureSwitch'];

/** "Circuit two's suction is seventy one", "discharge on compressor one two ten degrees" */
const ofOne: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  return quantity === null || isElectrical(quantity)
    ? null
    : withItsNumber(asReading()(tags, frame), frame);
};

const ofGroup: Means = (tags, frame) => withItsNumber(fixed('suctionPressure')(tags, frame), frame);

/** "…, right one's thirty one": the same of its neighbour. */
const ofItsNeighbour: Means = (tags, frame) => {
  const means = (quantity: QuantityId): Meaning | null => {
    const found = isElectrical(quantity) ? null : reading(quantity, amountIn(tags), frame);
    return found === null ? null : withItsNumber({ readings: [found] }, frame);
  };
  const ofThat = { means, otherwise: leftToAsk(tags) };
  // "First one's open, second one's twenty one ohms": of the heaters.
  if (amountIn(tags).unit !== 'ohm') return { ofThat };
  return { ofThat, ofIt: { means: ohmsAt(amountIn(tags), frame), inSentence: false } };
};

/** "Number two's down to ten now", a sentence behind the superheat of one of them. */
const ofItsNeighbourAgain: Means = (tags, frame) => {
  const { lastQuantity } = frame.context;
  const found = lastQuantity === null ? null : reading(lastQuantity, amountIn(tags), frame);
  return found === null ? null : withItsNumber({ readings: [found] }, frame);
};
const wasOfCoil = ({ context: { lastQuantity } }: Frame): boolean =>
  lastQuantity === 'superheat' || lastQuantity === 'subcooling';

const NTH = '[number] (<nth:which>|a|b|c|d)';
const ONE = '(circuit|system|compressor|rack|suction group|group|bank|evaporator|evap|coil)';
const AT = '(<link>|is (only|still|up|down|back) [(at|to)])';
const DRAWS = '(at|pulling|drawing|pulls|draws|running|running at|amps [(are|is|at)])';
const NTH_DRAWS = (slot: string): string =>
  `<the> compressor [number] <nth:which> [is] [${DRAWS}] <number:${slot}> [(amps|amp)]`;

/** What is read of one of several compressors, circuits or coils, told by its number or its side. */
export const NUMBERED_RULES: readonly Rule[] = [
  rule(
    `<the> compressor [number] <nth:which> [is] [${DRAWS}] <amount> [and] ${NTH_DRAWS('two')} [[and] ${NTH_DRAWS('three')} [[and] ${NTH_DRAWS('four')}]]`,
    drawnByEach,
    { examples: ['compressor one at eighteen amps compressor two nineteen'] },
  ),
  rule(
    `<the> <place> [number] <nth:which> [is] ${DRAWS} <tenths:one> [(amps|amp)] [and] [number] <nth:second> [is] ${DRAWS} <tenths:two> [(amps|amp)] [[and] [number] <nth:third> [is] ${DRAWS} <tenths:three> [(amps|amp)]]`,
    drawnByNumber,
    { examples: ['evap fan one is at point six two is at point six'] },
  ),
  rule(`<the> <place> [number] <nth:which> [is] [only] ${DRAWS} <amount>`, drawnByOne, {
    examples: ['compressor two is pulling nineteen amps'],
  }),
  rule('<the> compressor [number] <nth:which> <amount>', drawnByOneOrMore, {
    examples: ['compressor two nineteen amps'],
  }),
  rule(
    '<the> compressor [number] <nth:which> [is] (off|down|out|locked out) [(on|by|from) [the] [internal] <part>]',
    offOn,
    { examples: ['compressor three off on overload'] },
  ),
  rule(`[the] ${ONE} ${NTH} [is] <quantity> ${AT} <amount>`, ofOne, {
    examples: ['circuit two suction is seventy one'],
  }),
  rule(`[the] <quantity> (on|of|for|at|in) [the] ${ONE} ${NTH} ${AT} <amount>`, ofOne, {
    examples: ['suction on circuit b is fifty one'],
  }),
  rule(
    `[the] <quantity> [(at|on) the (coil|evaporator|evap|outlet|bulb|valve)] (on|of|for|at) [the] (number <nth:which>|(left|right|first|second|top|bottom) one) ${AT} <amount>`,
    ofOne,
    { unheard: true, examples: ['superheat at the coil on number one is nine'] },
  ),
  rule(
    `[(and|but)] (number <nth:which>|the (left|right|first|second|top|bottom|other) (one|coil|evap|evaporator)) is [(now|back|up|down|come (up|down))] [(at|to|up to|down to)] <amount> [now]`,
    ofItsNeighbourAgain,
    { unheard: true, apart: true, only: wasOfCoil, examples: [] },
  ),
  rule(`[the] suction group ${NTH} ${AT} <amount>`, ofGroup, {
    examples: ['suction group a is at twenty two'],
  }),
  rule(
    '[(and|but)] [(the|on the)] ((right|left|top|bottom|front|back|other|second|first|upper|lower) [(one|coil|side|circuit|evap|evaporator|fan)]|[compressor] number <nth:which>|compressor <nth:which>|b|c|d) (is|has|reads|is at) [only] <amount>',
    ofItsNeighbour,
    { examples: [] },
  ),
];
