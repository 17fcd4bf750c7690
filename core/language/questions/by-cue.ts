import type { Token } from '../../grammar/tokens.ts';
import { type AnswerableId, isSetting, QUANTITIES } from '../../terms/quantities.ts';
import type { PlaceId } from '../../terms/names.ts';
import { ONES, TEENS, TENS } from '../number-words.ts';
import { Clause, isUnread, pauseAfter, type Stretch, Wording } from '../clause.ts';
import { quantityId } from '../slots.ts';
import type { PlainQuestion, Question } from '../utterance.ts';
import { WordSet } from '../word-set.ts';
import { placeNamedIn, quantityNamedIn } from './named-in.ts';

/** A clause that asks something and that no rule reads. Names are looked for once, and only where a cue wants one: there are hundreds. */
class Asking extends Clause {
  private quantity: AnswerableId | null | undefined;
  private named: PlaceId | null | undefined;

  about(): AnswerableId | null {
    return this.quantity === undefined
      ? (this.quantity = quantityNamedIn(this.words))
      : this.quantity;
  }

  place(): PlaceId | null {
    return this.named === undefined ? (this.named = placeNamedIn(this.words)) : this.named;
  }
}

interface Cue {
  /** What the clause must say, each of them. */
  readonly says: readonly RegExp[];
  readonly asks: (clause: Asking) => Question | null;
}

const plain =
  (ask: PlainQuestion): Cue['asks'] =>
  () => ({ ask });

const about =
  (ask: 'target' | 'value' | 'compare'): Cue['asks'] =>
  (clause) => {
    const named = clause.about();
    return named === null ? null : { ask, about: named };
  };

const aboutNothing =
  (ask: PlainQuestion): Cue['asks'] =>
  (clause) =>
    clause.about() === null ? { ask } : null;

const trend: Cue['asks'] = (clause) => {
  const quantity = quantityId(clause.about() ?? undefined);
  return quantity === null || isSetting(quantity) ? null : { ask: 'trend', about: quantity };
};

const eta: Cue['asks'] = (clause) => {
  const quantity = quantityId(clause.about() ?? undefined);
  if (quantity !== null && QUANTITIES[quantity].dimension !== 'temperature') return null;
  const isOwn = quantity === null || quantity === 'setpointTemp';
  return { ask: 'eta', about: isOwn ? 'boxTemp' : quantity };
};

const margin: Cue['asks'] = ({ words }) => {
  const isLow = / (?:low|suction|l p|lp) /.test(words);
  return { ask: 'margin', about: isLow ? 'lowCutoutPressure' : 'highCutoutPressure' };
};

const switchOpen: Cue['asks'] = (clause) => {
  const place = clause.place();
  return place === null ? null : { ask: 'switch', about: place };
};

/** What a question is told by where no rule reads it, the first that fits being meant. */
const CUES: readonly Cue[] = [
  {
    says: [
      / (?:safe|ok|clear|good|all right|alright|can|may|should|could) /,
      / (?:braze|brazing|solder|soldering|weld|torch|flame) /,
    ],
    asks: () => ({ ask: 'safety', about: 'brazing' }),
  },
  {
    says: [/ (?:vent|venting|blow off|let .*go|release) /, / (?:gas|refrigerant|charge|it|this) /],
    asks: () => ({ ask: 'safety', about: 'venting' }),
  },
  {
    says: [
      / (?:how (?:much|high|far|many)|most|max|maximum|limit|high can) /,
      / (?:nitrogen|pressure test|leak test|pressurize|test pressure|pressure (?:test|on)) /,
    ],
    asks: () => ({ ask: 'limit', about: 'testPressure' }),
  },
  {
    says: [
      / (?:how (?:much|full|many|far)|most|max|maximum|limit|fill|filled|room|space|capacity) /,
      / (?:cylinder|tank|bottle|drum|jug) /,
    ],
    asks: () => ({ ask: 'limit', about: 'cylinderFill' }),
  },
  {
    says: [
      / (?:last (?:time|visit|trip|call|service|guy|tech|company)|history|here (?:last|before)|(?:work|worked|works) on (?:this|it|that)|previous|previously|been (?:here|serviced)) /,
      / (?:what|who|when|any|did|has|have|was|show|tell|is) /,
    ],
    asks: () => ({ ask: 'history' }),
  },
  {
    says: [
      / (?:when|how (?:long|much (?:longer|more time))|what time) /,
      / (?:temp|temperature|set point|down|cold|back|there|thirty|zero) /,
    ],
    asks: eta,
  },
  {
    says: [/ (?:timer|time (?:is )?left|minutes left|much longer|time remaining|time to go) /],
    asks: plain('timeLeft'),
  },
  {
    says: [
      / (?:compressed air|shop air|oxygen|air compressor) /,
      / (?:can|may|ok|safe|use|should) /,
    ],
    asks: () => ({ ask: 'safety', about: 'nitrogen' }),
  },
  {
    says: [/ (?:leak rate) /],
    asks: () => ({ ask: 'judge', about: 'leakRate' }),
  },
  {
    says: [
      / (?:amp|amps|current|amperage) /,
      / (?:imbalance|unbalance|unbalanced|imbalanced|balanced) /,
    ],
    asks: () => ({ ask: 'judge', about: 'currentImbalance' }),
  },
  {
    says: [/ (?:imbalance|unbalance|unbalanced|imbalanced|balanced) /],
    asks: () => ({ ask: 'judge', about: 'voltageImbalance' }),
  },
  {
    says: [
      / (?:non condensable|non condensables|noncondensable|noncondensables|air in (?:it|there|the system|here)) /,
    ],
    asks: () => ({ ask: 'judge', about: 'nonCondensables' }),
  },
  {
    says: [
      / (?:left to do|still (?:open|off|left|jumped|bypassed|to do)|forget|forgot|forgetting|left (?:open|off|undone)|put back|hook back|left jumped) /,
    ],
    asks: plain('leftOpen'),
  },
  {
    says: [
      / (?:did|have|has|was|were) (?:we|i|anybody|anyone|somebody|they|you|it|this) (?:ever|already)/,
      / (?:before|last|find|found|replace|replaced|fix|fixed|done|do|changed|see|seen) /,
    ],
    asks: () => ({ ask: 'history' }),
  },
  {
    says: [/ (?:which way|where) (?:should|do|would) i (?:go|head|turn) /],
    asks: aboutNothing('nextCheck'),
  },
  {
    says: [
      / (?:should|supposed|normal|ok) /,
      / (?:that|this|so|as) (?:high|low|hot|cold|warm|much) /,
      / (?:it|that|they|this) /,
    ],
    asks: (clause) => ({ ask: 'compare', about: clause.about() }),
  },
  {
    says: [/ (?:whose|says who|who says|who said) /, / (?:number|that|says|this) /],
    asks: plain('working'),
  },
  {
    says: [
      / (?:compare|compared|different|better|worse|versus|improved) /,
      / (?:start|started|before|earlier|arrived|got here|showed up|walked in|first) /,
    ],
    asks: plain('beforeAfter'),
  },
  {
    says: [
      / (?:before and after|than before|(?:to|from|with) (?:the )?before|what (?:is|has) (?:changed|different)|any (?:better|improvement|difference)|how much (?:did|have|has) .*(?:gain|gained|improve|improved|change|changed|come (?:down|up)|drop|dropped)|did (?:that|this|it|we|i) .*do (?:for|to)|did .*(?:help|make a difference|do any good|do anything|fix it|bring .* (?:down|up)|lower|improve|change anything)) /,
    ],
    asks: plain('beforeAfter'),
  },
  {
    says: [
      / (?:what|where|how|read|give|tell|show) /,
      / (?:did (?:we|i|it) (?:start|begin)|befores|the beginning|at the start|to start with|starting (?:point|readings|numbers)|(?:got|came|were|was) (?:here|there) first) /,
    ],
    asks: plain('before'),
  },
  {
    says: [
      / (?:note|notes|report|write up|writeup|ticket|paperwork|(?:you|i) wrote) /,
      / (?:read|hear|say|look|show|what|how|see|have) /,
    ],
    asks: plain('note'),
  },
  {
    says: [
      / (?:readings|numbers|all (?:that|of it|of that)|everything|back to me|so far|(?:have|got|write|wrote|written) down|all (?:have|do) you|you got) /,
      / (?:read|run|go|say|give|tell|list|what|show|repeat) /,
    ],
    asks: plain('readback'),
  },
  {
    says: [
      / (?:where|how|what|who|explain|show) /,
      / (?:(?:get|got|getting|come|came|coming|figure|figured|calculate|calculated|work|arrive at|reach|based|pull|pulled) .*(?:that|it|from|number|this|out|on)|math|formula|calculation|equation|source) /,
    ],
    asks: aboutNothing('working'),
  },
  {
    says: [
      / (?:trip|trips|tripping|cut out|cutting out|cuts out|kick out|kicks out|cut off|opens|limit) /,
      / (?:close|near|far|room|margin|longer|further|farther|more|going to|will|about to|how (?:much|many)|before|until|till|away|headroom) /,
    ],
    asks: margin,
  },
  {
    says: [
      / (?:is|are|has|did|does|tell|whether|if|which) /,
      / (?:open|opened|closed|tripped|made|making|stuck|pulled in|energized|calling|shut|working|good|bad) /,
    ],
    asks: switchOpen,
  },
  {
    says: [
      / (?:what|where|which|how|give|tell) /,
      / (?:should|ought|oughta|supposed|target|want|need|shoot|shooting|aim|aiming|looking for|after|normal|normally|ideal|correct|proper|expect|must|goal|desired|recommended|typical|good) /,
    ],
    asks: about('target'),
  },
  {
    says: [/ (?:why|how come|cause|causes|causing|make|makes|making|reason|explain|explains) /],
    asks: (clause) => (clause.about() === null ? null : { ask: 'causes' }),
  },
  {
    says: [
      / (?:is|are|has|have|how|which|what|where|did|does) /,
      / (?:going|moving|headed|trend|trending|rising|falling|climbing|dropping|settled|settle|settling|holding|steady|stable|level|leveled|leveling|drifting|creeping|coming|pulling|doing) /,
    ],
    asks: trend,
  },
  {
    says: [
      / (?:is|are|does|do|am|how|was|would) /,
      / (?:high|low|ok|good|bad|right|normal|fine|enough|off|far|compare|compared|look|looks|looking|where it|too|range|close|ballpark|neighborhood|all right|alright|warm|cold|hot|over|under|wrong|excessive|acceptable) /,
    ],
    asks: about('compare'),
  },
  {
    says: [
      / (?:that|it|this|we|i|she|things) /,
      / (?:look|looks|looking|sound|sounds|ballpark|neighborhood|normal|about right)(?! at| for) /,
      / (?:how|is|are|does|do|am) /,
    ],
    asks: () => ({ ask: 'compare', about: null }),
  },
  {
    says: [
      / (?:what|any|why|how come|which|got) /,
      / (?:wrong|problem|going on|reckon|think it is|think is|matter with|issue|diagnosis|diagnose|to blame|culprit|clue|idea what|cause|causing|fault|failed here) /,
    ],
    asks: plain('causes'),
  },
  {
    says: [
      / (?:why|how come) /,
      / (?:cool|cooling|cold|freeze|freezing|pull down|trip|run|running|start|warm|ice|icing) /,
    ],
    asks: plain('causes'),
  },
  {
    says: [
      / (?:what|where|which|give|anything|something|should|tell) /,
      / (?:check|look|looking|measure|test|meter|try|probe|leads|clamp|gages) /,
      / (?:i|me|you|we|next|now|first|to|else) /,
    ],
    asks: aboutNothing('nextCheck'),
  },
  {
    says: [
      / (?:what|where|how|give|tell|remind|which|current|currently|present|show|calculate|get|got) /,
    ],
    asks: about('value'),
  },
];

const LEAD =
  /^(?: (?:so|ok|and|hey|well|now|then|alright|all right|um|oh|but|please|can you|could you|would you|will you|do you know|you know|i wonder|wondering|i need to know|i want to know|just|quick question|question|my|the|on|for))+(?= )/;
const ASKING =
  '(?:what|where|how|which|why|who|whose|when|is|are|am|has|have|did|does|do|should|will|would|can|could|may|any|anything|give|tell|read|show|remind|say|run|list|go|compare|calculate|figure|explain|got any|got a|you got|you have|current)';
const SOME_WORD = /[a-z]+/g;
const ASKING_WORDS = new WordSet(ASKING.match(SOME_WORD) ?? []);
const LEAD_WORDS = new WordSet(LEAD.source.match(SOME_WORD) ?? []);

/** Told by single words, in a tenth of the time that the patterns take: most clauses ask nothing. */
function mayBeginAsking({ tokens, start, end }: Clause): boolean {
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token === undefined || ASKING_WORDS.has(token)) return true;
    if (!LEAD_WORDS.has(token)) return false;
  }
  return false;
}
const ASKS = new RegExp(`^ ${ASKING}(?= )`);

/** "Can't get a torch in there" tells, and asks nothing. */
const TELLS =
  /^ (?:(?:can|could|will|would|do|did|does) not|(?:could|would|may|will) be|tell (?:them|em|him|her|the|everybody)|got (?:a|an) (?!target|number|reading|value|figure|guess|clue|idea|minute|sec|good|limit)\w+) /;
/** A sentence that breaks off has not said yet what it asks. */
const BROKEN_OFF = / (?:to|of|the|my|a|an|and|or|than|but|is) $/;

/** Words of which a number or a name of somebody else's say that it is no question to us. */
const NOT_OURS = new Wording(
  / (?:lunch|coffee|beer|truck|van|home|office|boss|game|weather|parking|park|phone|invoice|bill|price|cost|costs|pay|paid|if|he|she|they|him|her|them|your|customer|manager|owner|dispatch|somewhere|thing about) /,
);

const NUMBER_WORDS = new WordSet([
  ...ONES.slice(1),
  ...TEENS,
  ...TENS,
  ...['hundred', 'thousand', 'half', 'quarter', 'zero', 'point', 'minus'],
]);

function hasNumber({ tokens, start, end }: Clause): boolean {
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token !== undefined && (token.value !== null || NUMBER_WORDS.has(token))) return true;
  }
  return false;
}

interface Read extends Stretch {
  readonly meaning: object;
}

/** A sentence, and its words. */
export interface Said {
  readonly text: string;
  readonly tokens: readonly Token[];
}

/** A question told by its cue words, and the stretch of tokens that it was told by. */
export interface AskedByCue extends Stretch {
  readonly question: Question;
}

const NOTHING_ASKED: readonly AskedByCue[] = [];

/** What the clauses ask that no rule reads anything of. */
export function askedByCues({ text, tokens }: Said, read: readonly Read[]): readonly AskedByCue[] {
  if (!text.includes('?') && !ASKING_WORDS.hasAny(tokens)) return NOTHING_ASKED;
  const asked: AskedByCue[] = [];
  for (let start = 0; start < tokens.length;) {
    const end = pauseAfter(tokens, start);
    const question = isLeft({ start, end }, read)
      ? askedBy(new Asking(tokens, start, end), endsAsking(text, tokens[end - 1]))
      : null;
    if (question !== null) asked.push({ question, start, end });
    start = end;
  }
  return asked;
}

const endsAsking = (text: string, last: Token | undefined): boolean =>
  text.includes('?') && /^\s*\?/.test(text.slice(last?.end ?? 0));

/** "Last time we were here": talk behind its beginning leaves a question what it was, a condition does not. */
const isLeft = (clause: Stretch, read: readonly Read[]): boolean =>
  isUnread(clause, read) || read.every((each) => isUnread(clause, [each]) || isAside(each, clause));

const isAside = ({ start, meaning }: Read, clause: Stretch): boolean =>
  start > clause.start && Object.keys(meaning).length === 0;

/**
 * What a clause asks by the words in it, where no rule reads any of it: "what all should this superheat be running
 * today". Nothing for a clause with a number, which must be asked about itself.
 */
function askedBy(clause: Asking, asksBySign: boolean): Question | null {
  if (!asksBySign && !mayBeginAsking(clause)) return null;
  if (hasNumber(clause) || NOT_OURS.isIn(clause) || BROKEN_OFF.test(clause.words)) return null;
  if (!asksBySign && !asksByWords(clause)) return null;
  for (const { says, asks } of CUES_MADE_READY) {
    const question = saysAll(clause, says) ? asks(clause) : null;
    if (question !== null) return question;
  }
  // "Superheat?"
  return asksBySign && clause.end - clause.start <= 3 ? about('value')(clause) : null;
}

function asksByWords({ words }: Clause): boolean {
  const asking = words.replace(LEAD, '');
  return ASKS.test(asking) && !TELLS.test(asking);
}

const CUES_MADE_READY = CUES.map(({ says, asks }) => ({
  says: says.map((cue) => new Wording(cue)),
  asks,
}));

function saysAll(clause: Clause, says: readonly Wording[]): boolean {
  for (const wording of says) if (!wording.isIn(clause)) return false;
  return true;
}
