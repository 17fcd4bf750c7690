import { ANY_WEEKDAY } from '../../terms/calendar.ts';
import { spelledOut } from '../words/own-reading.ts';
import type { Context } from '../context.ts';
import type { DraftUtterance } from './told.ts';

const LEAD =
  '(?:(?:ok|okay|so|alright|well|yeah|um|uh|and|anyway|apparently|supposedly|i guess|looks like|sounds like|called in|call is|ticket is|it was)[ ,]+)*';
const IT =
  '(?:(?:the |their |this |that |his |her |our |whole |entire )*(?:it|she|they|box|cooler|freezer|walk in|walk-in|reach in|reach-in|case|unit|machine|fridge|cabinet|system|thing|table|compressor|ice machine|product|food|milk|beer|meat|fish|produce|dairy|ice cream|drinks?|everything|stuff|temp|temps|temperature|ice)(?: temp| temps| temperature)?)';
const IS =
  '(?:(?:is|are|was|were|has|had|have been|got|gets|keeps?|been|being|just|went|goes|going|still|always|all|really|pretty|way|too|running|getting|a bit|a little|half|completely|totally) )*';
/** What is wrong with it, as it is told to whoever takes the call. */
const SYMPTOM =
  '(?:warm|warmer|dead|down|noisy|loud|soft|mushy|melting|melted|thawing|thawed|spoiling|sweating|frozen|freezing|climbing|rising|rattling|buzzing|humming|squealing|smoking|leaking|tripping|icing|iced|frosting|frosted|short cycling|beeping|alarming|dripping|' +
  'not (?:cooling|cold|cold enough|holding|keeping|working|running|starting|freezing|making|dispensing|getting|coming|shutting|turning|staying|pulling)|no (?:cooling|cold|power|ice|cold air)|' +
  '(?:will|wo|would|does|did|can|ca|could) ?not (?:cool|hold|keep|work|run|start|freeze|make|get|come|shut|turn|stay|pull|stop)|' +
  '(?:quit|stopped|died|trips|tripped|freezes|froze|ices|leaks|rattles|runs? (?:all the time|all day|all night|constantly|nonstop|non-stop|continuously|too)|cuts? out|shuts? (?:off|down)|shut (?:off|down)|went (?:down|out|off)|goes (?:down|out|off)))';
/** So it ends, or goes on to when, how and how much. */
const TAIL = `(?=$|[ ,.]*(?:since|for|all|again|every|when|whenever|this|last|yesterday|today|overnight|now|on (?:them|him|her|us|and off|${ANY_WEEKDAY}|high|low)|at (?:night|times|about|around)|in the (?:morning|night|afternoon|box|back)|up|over|off|out|temp|temperature|water|oil|all over|inside|working|cooling|running|freezing|making|the (?:breaker|box|product|food)|below|under|past|down|enough|ice|cold|down to|to temp|too|and|but|like|a lot|sometimes|intermittently|as|so)\\b)`;
const SYMPTOMATIC = new RegExp(`^${LEAD}(?:${IT} )?${IS}${SYMPTOM}${TAIL}`, 'i');
const NAMED_SO = new RegExp(
  `^${LEAD}(?:(?:warm|hot|soft|melting|frozen|noisy|leaking|dead) ${IT}|(?:high|low|box|freezer|cooler) ?(?:temp|temperature)(?: alarm)?|(?:temp )?alarm)\\b`,
  'i',
);
/** "Warm out today", "hot day", "down the hall": of nothing that is kept cold. */
const OF_ELSE =
  /\b(?:any ?more|no longer|again now|fine now|good now|out (?:here|there|today)|outside|day|weather|coffee|up (?:here|there)|in here|on the roof|truck|van|hall|stairs|road|lunch|my|me|i|i'm|we)\b/i;

const SOMEBODY =
  "(?:the |a |their |my |our )?(?:(?!if |when |what |that |as |until |unless )\\w+ )?(?:owner|customer|manager|chef|cook|kitchen|store|guy|lady|clerk|boss|tenant|nurse|teacher|bartender|bar|baker|butcher|staff|office|dispatch|janitor|custodian|landlord|they|he|she|somebody|someone)(?:'s)?";
const TOLD_US =
  '(?:(?:are |is |were |was )?(?:saying|telling me|telling us|complaining)|called|calls|call|phoned|rang|texted|emailed|reported|reports|said|says|say|told|tells|complained|complains|noticed)';
const SAID_BY = new RegExp(
  `^${LEAD}(?:${SOMEBODY}(?: just| first| also)? ${TOLD_US}|(?:says|said))\\b`,
  'i',
);
const SAID_LAST = new RegExp(`[ ,]${SOMEBODY} (?:said|says|say|told me|told us|claims)\\.?$`, 'i');
const SYMPTOM_ANYWHERE = new RegExp(
  `\\b(?:${SYMPTOM}|(?:is|are|was|were|been|up|down|hit|hitting|reading)(?: up| down)? (?:at|to) \\w+|degrees)\\b`,
  'i',
);

const tellsSymptom = (clause: string): boolean => {
  const words = spelledOut(clause);
  return (
    (SYMPTOMATIC.test(words) || NAMED_SO.test(words)) && !(OF_ELSE.test(words) || BARE.test(words))
  );
};

const isSaidByOthers = (text: string): boolean => {
  const words = spelledOut(text);
  return (SAID_BY.test(words) || SAID_LAST.test(words)) && SYMPTOM_ANYWHERE.test(words);
};

/** "Won't get below forty five", "for two days": other numbers are asked about. */
const COUNTS = /\b(?:below|under|above|hold|holding|get|getting|days?|weeks?|hours?|since)\b/i;

/** "It's dead", before any part was spoken of: all of it is, and nobody looked why. */
const ALL_DEAD =
  /^(?:(?:so|well|okay|ok|yeah)[ ,]+)*(?:(?:it|she|the whole thing)(?:'s| is) )?(?:just |completely |totally )*dead(?: as a \w+| in the water)?\.?$/i;
/** Each of these alone may be said of anything. */
const BARE = /^(?:down|climbing|rising|alarm|leaks|trips|stopped)\.?$/i;

/**
 * Before anything was read, found or done, what is wrong is why they called: kept whole, its numbers with it, for nobody
 * measured them here. `null` where the sentence is no complaint, or tells anything else.
 */
function complaintIn({ text, facts, findings, unclaimed }: DraftUtterance): string | null {
  const said = text.trim();
  if (findings.length > 0) return ALL_DEAD.test(said) ? said : null;
  if (isSaidByOthers(said)) return said;
  if (unclaimed.length > 0 && !COUNTS.test(said)) return null;
  if (facts.length === 0) return tellsSymptom(said) ? said : null;
  const behind = [...said.matchAll(/[,.;]\s+/g)].map(({ index, 0: mark }) =>
    said.slice(index + mark.length),
  );
  return behind.find(tellsSymptom) ?? null;
}

/** What was told as why they called, and as nothing else. */
export function tellWhyCalled(all: DraftUtterance, context: Context): void {
  if (!context.wantsComplaint || tellsMore(all)) return;
  if (all.findings.length > 0 && context.lastPart !== null) return;
  const complaint = complaintIn(all);
  if (complaint === null) return;
  all.findings = [];
  all.memos = [complaint];
  all.remarks = [];
  all.unclaimed = [];
}

const tellsMore = ({
  readings,
  work,
  recommendations,
  questions,
  commands,
  memos,
  doubts,
}: DraftUtterance): boolean =>
  [readings, work, recommendations, questions, commands, memos, doubts].some(
    ({ length }) => length > 0,
  );
