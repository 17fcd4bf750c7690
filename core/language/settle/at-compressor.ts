import type { Context } from '../context.ts';
import type { Reading } from '../utterance.ts';

/** How the two ends of a suction line are told. */
const COMPRESSOR = /\b(?:compress[eo]r|comp)\b/i;
const COIL = /\b(?:bulb|coil|evap(?:orator)?|txv|valve|outlet|case|box)\b/i;

const isOfLine = ({ quantity, place }: Reading): boolean =>
  quantity === 'suctionLineTemp' && place === null;

/** "Thirty seven at the bulb and fifty eight at the compressor": which of the two stands at the compressor. */
function endAt(words: string, many: number): number | null {
  const [compressor, coil] = [words.search(COMPRESSOR), words.search(COIL)];
  if (compressor === -1) return null;
  return many === 1 || compressor > coil ? many - 1 : 0;
}

/** A suction line read again at the compressor, whose superheat is not the valve's: of that end, where the other was told too. */
export function atCompressor(
  readings: readonly Reading[],
  { lastQuantity }: Context,
): readonly Reading[] {
  const ofLine = readings.filter(isOfLine);
  if (ofLine.length === 0 || (ofLine.length === 1 && lastQuantity !== 'suctionLineTemp'))
    return readings;
  const there = ofLine.filter((reading) => {
    const together = ofLine.filter(({ words }) => words === reading.words);
    const end = endAt(reading.words, together.length);
    return end !== null && together[end] === reading;
  });
  return there.length === 0 || (there.length === ofLine.length && ofLine.length > 1)
    ? readings
    : readings.map((each) => (there.includes(each) ? { ...each, place: 'compressor' } : each));
}
