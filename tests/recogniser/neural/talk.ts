import { pickOne } from './random.ts';

const WHO =
  'I|we|they|he|she|the customer|the manager|my brother|the driver|somebody|the cook'.split('|');
const DID =
  'called|left|forgot|wants|needs|bought|parked|lost|found|asked about|talked about|heard about|paid for|is waiting for|is looking for|was going to bring|does not like|will send|picked up'.split(
    '|',
  );
const WHAT =
  'the truck|a ladder|the invoice|some coffee|the keys|a sandwich|the other number|his phone|the weather|the football game|the back door|a new battery|the radio|those boxes|the parking lot|her birthday|the schedule|a bigger wrench|the whole thing|dinner'.split(
    '|',
  );
const WHEN =
  'this morning|yesterday|on Friday|after lunch|next week|in a minute|before noon|last night|every time|again|for the kids|at home|in the office|down the street|with my wife|about an hour ago'.split(
    '|',
  );
const ASIDE =
  'you know|okay so|well|hey|listen|I guess|honestly|hold on|let me see|by the way|no kidding|all right then|what did you say|can you hear me|thanks a lot|see you later'.split(
    '|',
  );

/** Talk that is for somebody else, which the recogniser must hear well enough not to take for a reading. */
export function sampleTalk(random: () => number): readonly string[] {
  const parts = [
    ...(random() < 0.5 ? [pickOne(ASIDE, random)] : []),
    pickOne(WHO, random),
    pickOne(DID, random),
    ...(random() < 0.85 ? [pickOne(WHAT, random)] : []),
    ...(random() < 0.6 ? [pickOne(WHEN, random)] : []),
  ];
  return parts.join(' ').toLowerCase().split(' ');
}
