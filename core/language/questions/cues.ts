import { type AnswerableId, isSetting, QUANTITIES } from '../../terms/quantities.ts';
import type { JudgedId } from '../../terms/judged.ts';
import type { PlaceId } from '../../terms/names.ts';
import { quantityId } from '../slots.ts';
import type { PlainQuestion, Question, SafetyTopic } from '../utterance.ts';

/** What is looked for in a clause that asks: its words, and what is named among them. */
export interface Asked {
  readonly words: string;
  quantity(): AnswerableId | null;
  place(): PlaceId | null;
}

export interface Cue {
  /** What is asked, told by the names in the clause; `null` where it cannot be that, and the next row is tried. */
  readonly asks: (clause: Asked) => Question | null;
  /** Of each of these something must be said: words or wordings, with a choice in parentheses. */
  readonly says: readonly string[];
  /** Of this nothing. */
  readonly unless?: string;
  /** A clause that no rule reads, and that this row answers. */
  readonly example: string;
}

const plain =
  (ask: PlainQuestion): Cue['asks'] =>
  () => ({ ask });
const safety =
  (about: SafetyTopic): Cue['asks'] =>
  () => ({ ask: 'safety', about });
const judge =
  (about: JudgedId): Cue['asks'] =>
  () => ({ ask: 'judge', about });
const limit =
  (about: 'testPressure' | 'cylinderFill'): Cue['asks'] =>
  () => ({ ask: 'limit', about });
const history: Cue['asks'] = () => ({ ask: 'history' });

/** Of the quantity that is named. */
const about =
  (ask: 'target' | 'value' | 'compare'): Cue['asks'] =>
  (clause) => {
    const named = clause.quantity();
    return named === null ? null : { ask, about: named };
  };

/** Of a quantity it would ask something else. */
const ofNoQuantity =
  (ask: PlainQuestion): Cue['asks'] =>
  (clause) =>
    clause.quantity() === null ? { ask } : null;

const ofAQuantity =
  (ask: PlainQuestion): Cue['asks'] =>
  (clause) =>
    clause.quantity() === null ? null : { ask };

const trend: Cue['asks'] = (clause) => {
  const quantity = quantityId(clause.quantity() ?? undefined);
  return quantity === null || isSetting(quantity) ? null : { ask: 'trend', about: quantity };
};

/** Of the box, unless another temperature is named. */
const eta: Cue['asks'] = (clause) => {
  const quantity = quantityId(clause.quantity() ?? undefined);
  if (quantity !== null && QUANTITIES[quantity].dimension !== 'temperature') return null;
  const isOwn = quantity === null || quantity === 'setpointTemp';
  return { ask: 'eta', about: isOwn ? 'boxTemp' : quantity };
};

/** "How cold should it get": the box, where nothing else is named. */
const boxTarget: Cue['asks'] = (clause) =>
  / (?:coil|line) /.test(clause.words) || clause.quantity() !== null
    ? null
    : { ask: 'target', about: 'boxTemp' };

const margin: Cue['asks'] = ({ words }) => {
  const isLow = / (?:low|suction|l p|lp) /.test(words);
  return { ask: 'margin', about: isLow ? 'lowCutoutPressure' : 'highCutoutPressure' };
};

const switchOpen: Cue['asks'] = (clause) => {
  const place = clause.place();
  return place === null ? null : { ask: 'switch', about: place };
};

/** The questions that are told by their words where no rule reads them, the first that fits being meant. */
export const CUES: readonly Cue[] = [
  {
    asks: safety('brazing'),
    says: [
      'safe|ok|clear|good|all right|alright|can|may|should|could',
      'braze|brazing|solder|soldering|weld|torch|flame',
    ],
    example: 'could that joint take a torch again',
  },
  {
    asks: safety('venting'),
    says: ['vent|venting|blow off|release', 'gas|refrigerant|charge|it|this'],
    example: 'is it legal to vent the rest of this gas',
  },
  {
    asks: safety('venting'),
    says: ['let', 'go', 'gas|refrigerant|charge|it|this'],
    example: 'will it hurt to let the gas go',
  },
  {
    asks: limit('testPressure'),
    says: [
      'how (much|high|far|many)|most|max|maximum|limit|high can',
      'nitrogen|pressure test|leak test|pressurize|test pressure|pressure on',
    ],
    example: 'how far up do you go on a leak test',
  },
  {
    asks: limit('cylinderFill'),
    says: [
      'how (much|full|many|far)|most|max|maximum|limit|fill|filled|room|space|capacity',
      'cylinder|tank|bottle|drum|jug',
    ],
    example: 'how many pounds can go in this tank',
  },
  {
    asks: history,
    says: [
      'last (time|visit|trip|call|service|guy|tech|company)|history|here (last|before)|(work|worked|works) on (this|it|that)|previous|previously|been (here|serviced)',
      'what|who|when|any|did|has|have|was|show|tell|is',
    ],
    example: 'did the last guy leave any notes',
  },
  {
    asks: eta,
    says: [
      'when|how (long|much (longer|more time))|what time',
      'temp|temperature|set point|down|cold|back|there|thirty|zero|pull down|pulldown',
    ],
    unless: 'when there (is|are|was)',
    example: 'when is the box going to be at temp',
  },
  {
    asks: plain('timeLeft'),
    says: ['timer|time (is left|left)|minutes left|much longer|time remaining|time to go'],
    example: 'where is that timer sitting',
  },
  {
    asks: safety('nitrogen'),
    says: ['compressed air|shop air|oxygen|air compressor', 'can|may|ok|safe|use|should'],
    example: 'would shop air be ok to use on it',
  },
  {
    asks: judge('leakRate'),
    says: ['leak rate'],
    example: 'is that over the leak rate',
  },
  {
    asks: judge('currentImbalance'),
    says: ['amp|amps|current|amperage', 'imbalance|unbalance|unbalanced|imbalanced|balanced'],
    example: 'do those amps look balanced to you',
  },
  {
    asks: judge('voltageImbalance'),
    says: ['imbalance|unbalance|unbalanced|imbalanced|balanced'],
    example: 'how bad of an imbalance have we got',
  },
  {
    asks: judge('nonCondensables'),
    says: [
      'non condensable|non condensables|noncondensable|noncondensables|air in (it|there|the system|here)',
    ],
    example: 'any chance of air in here',
  },
  {
    asks: plain('leftOpen'),
    says: [
      'left to do|still (open|off|left|jumped|bypassed|to do)|forget|forgot|forgetting|left (open|off|undone)|put back|hook back|left jumped',
    ],
    example: 'which switches are still jumped',
  },
  {
    asks: history,
    says: [
      '(did|have|has|was|were) (we|i|anybody|anyone|somebody|they|you|it|this) (ever|already)',
      'before|last|find|found|replace|replaced|fix|fixed|done|do|changed|see|seen',
    ],
    example: 'did we ever find a leak on this one before',
  },
  {
    asks: ofNoQuantity('nextCheck'),
    says: ['(which way|where) (should|do|would) i (go|head|turn)'],
    example: 'which way should i go from the stat',
  },
  {
    asks: (clause) => ({ ask: 'compare', about: clause.quantity() }),
    says: [
      'should|supposed|normal|ok',
      '(that|this|so|as) (high|low|hot|cold|warm|much)',
      'it|that|they|this',
    ],
    example: 'should it be that high',
  },
  {
    asks: plain('working'),
    says: ['whose|says who|who says|who said', 'number|that|says|this'],
    example: 'whose number is that',
  },
  {
    asks: plain('beforeAfter'),
    says: [
      'compare|compared|different|better|worse|versus|improved',
      'start|started|before|earlier|arrived|got here|showed up|walked in|first',
    ],
    example: 'how different is it from when we started',
  },
  {
    asks: plain('beforeAfter'),
    says: [
      'before and after|than before|(to|from|with) (the before|before)|what (is|has) (changed|different)|any (better|improvement|difference)',
    ],
    example: 'is there any improvement',
  },
  {
    asks: plain('beforeAfter'),
    says: [
      'how much (did|have|has)',
      'gain|gained|improve|improved|change|changed|come (down|up)|drop|dropped',
    ],
    example: 'how much has all that improved it',
  },
  {
    asks: plain('beforeAfter'),
    says: ['did (that|this|it|we|i)', 'do (for|to)|what did (that|this|it) do'],
    example: 'what did that do for me',
  },
  {
    asks: plain('beforeAfter'),
    says: [
      'did',
      'help|make a difference|do any good|do anything|fix it|lower|improve|change anything',
    ],
    example: 'did cleaning it do any good',
  },
  {
    asks: plain('beforeAfter'),
    says: ['did', 'bring', 'down|up'],
    example: 'did brushing it bring the head down',
  },
  {
    asks: () => ({ ask: 'before' }),
    says: [
      'what|where|how|read|give|tell|show',
      'did (we|i|it) (start|begin)|befores|the beginning|at the start|to start with|starting (point|readings|numbers)|(got|came|were|was) (here|there) first',
    ],
    example: 'where did we start',
  },
  {
    asks: plain('note'),
    says: [
      'note|notes|report|write up|writeup|ticket|paperwork|(you|i) wrote',
      'read|hear|say|look|show|what|how|see|have',
    ],
    example: 'have a look at what you wrote there',
  },
  {
    asks: plain('readback'),
    says: [
      'readings|numbers|all (that|of it|of that)|everything|back to me|so far|(have|got|write|wrote|written) down|all (have|do) you|you got',
      'read|run|go|say|give|tell|list|what|show|repeat',
    ],
    example: 'run through my readings',
  },
  {
    asks: boxTarget,
    says: [
      'how cold|what temp|what temperature',
      'should|ought|supposed|need|needs|must',
      'it|this|in here|in there|thing|cooler|freezer',
    ],
    example: 'how cold should this thing get',
  },
  {
    asks: ofNoQuantity('working'),
    says: [
      'where|how|what|who|explain|show',
      'get|got|getting|come|came|coming|figure|figured|calculate|calculated|work|arrive at|reach|based|pull|pulled',
      'that|it|from|number',
    ],
    unless: 'how come',
    example: 'where are you getting that from',
  },
  {
    asks: ofNoQuantity('working'),
    says: ['where|how|what|who|explain|show', 'math|formula|calculation|equation|source'],
    example: 'what math did you use',
  },
  {
    asks: margin,
    says: [
      'trip|trips|tripping|cut out|cutting out|cuts out|kick out|kicks out|cut off|opens|limit',
      'close|near|far|room|margin|longer|further|farther|more|going to|will|about to|how (much|many)|before|until|till|away|headroom',
    ],
    example: 'how much further till the high pressure opens',
  },
  {
    asks: switchOpen,
    says: [
      'is|are|has|did|does|tell|whether|if|which',
      'open|opened|closed|tripped|made|making|stuck|pulled in|energized|calling|shut|working|good|bad',
    ],
    example: 'is it the thermostat that is open',
  },
  {
    asks: about('target'),
    says: [
      'what|where|which|how|give|tell',
      'should|ought|oughta|supposed|target|want|need|shoot|shooting|aim|aiming|looking for|after|normal|normally|ideal|correct|proper|expect|must|goal|desired|recommended|typical|good',
    ],
    example: 'what superheat should this thing be running',
  },
  {
    asks: ofAQuantity('causes'),
    says: ['why|how come|cause|causes|causing|make|makes|making|reason|explain|explains'],
    example: 'what would make the suction drop like that',
  },
  {
    asks: trend,
    says: [
      'is|are|has|have|how|which|what|where|did|does',
      'going|moving|headed|trend|trending|rising|falling|climbing|dropping|settled|settle|settling|holding|steady|stable|level|leveled|leveling|drifting|creeping|coming|pulling|doing',
    ],
    example: 'is the suction about settled do you think',
  },
  {
    asks: about('compare'),
    says: [
      'is|are|does|do|am|how|was|would',
      'high|low|ok|good|bad|right|normal|fine|enough|off|far|compare|compared|look|looks|looking|where it|too|range|close|ballpark|neighborhood|all right|alright|warm|cold|hot|over|under|wrong|excessive|acceptable',
    ],
    example: 'are we in the ballpark on superheat',
  },
  {
    asks: () => ({ ask: 'compare', about: null }),
    says: [
      'that|it|this|we|i|she|things',
      'look|looks|looking|sound|sounds|ballpark|neighborhood|normal|about right',
      'how|is|are|does|do|am',
    ],
    unless: '(look|looks|looking|sound|sounds) (at|for)',
    example: 'how are things looking overall',
  },
  {
    asks: plain('causes'),
    says: [
      'what|any|why|how come|which|got',
      'wrong|problem|going on|reckon|think it is|think is|matter with|issue|diagnosis|diagnose|to blame|culprit|clue|idea what|cause|causing|fault|failed here',
    ],
    example: 'any clue what is to blame here',
  },
  {
    asks: plain('causes'),
    says: [
      'why|how come',
      'cool|cooling|cold|freeze|freezing|pull down|trip|run|running|start|warm|ice|icing',
    ],
    example: 'how come it will barely cool',
  },
  {
    asks: ofNoQuantity('nextCheck'),
    says: [
      'what|where|which|give|anything|something|should|tell',
      'check|look|looking|measure|test|meter|try|probe|leads|clamp|gages',
      'i|me|you|we|next|now|first|to|else',
    ],
    example: 'where would you put the leads next',
  },
  {
    asks: about('value'),
    says: [
      'what|where|how|give|tell|remind|which|current|currently|present|show|calculate|get|got',
    ],
    example: 'where did the box temp land',
  },
];
