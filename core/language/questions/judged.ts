import type { JudgedId } from '../../terms/judged.ts';
import type { PlaceId } from '../../terms/names.ts';
import { FOOD, THEM } from '../words/food-words.ts';
import { amountIn } from '../numbers/measure.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { ask, plain, TELL } from './asking.ts';

const judge =
  (about: JudgedId): Means =>
  () =>
    ask({ ask: 'judge', about });

/** Of which control is told by what was spoken of before; the high one where nothing says otherwise. */
const judgeLastControl: Means = (_tags, { context: { lastPart, lastPlace, lastQuantity } }) => {
  const isLow =
    lastPart === 'lowPressureSwitch' ||
    lastPlace === 'lowPressureSwitch' ||
    lastQuantity === 'lowCutoutPressure';
  return ask({ ask: 'judge', about: isLow ? 'lowPressureSwitch' : 'highPressureSwitch' });
};

/** A bare "cap" is the run capacitor, but for the start capacitor that was spoken of. */
const judgeCan: Means = (tags, frame) => {
  const { lastPart, lastPlace } = frame.context;
  const isStart = lastPart === 'startCapacitor' || lastPlace === 'startCapacitor';
  const saysRun = /\brun\b/i.test(frame.wordsOf(frame.span));
  return judge(isStart && !saysRun ? 'startCapacitor' : 'runCapacitor')(tags, frame);
};

/** Behind amps on the lines a bare "imbalance" is of those, else of what stands between the legs. */
const judgeLegs: Means = (tags, frame) => {
  const { lastPlace, lastQuantity } = frame.context;
  const isOfAmps = lastQuantity === 'current' && LINES.some((line) => line === lastPlace);
  const saysVolts = /\b(?:voltage|phases?|power)\b/i.test(frame.wordsOf(frame.span));
  return judge(isOfAmps && !saysVolts ? 'currentImbalance' : 'voltageImbalance')(tags, frame);
};
const LINES: readonly PlaceId[] = ['lineOne', 'lineTwo', 'lineThree'];

/** A bare "heater" is the one that defrosts, but for the door's that was spoken of. */
const judgeHeater: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const { lastPart, lastPlace } = frame.context;
  const wasDoor = lastPart === 'doorHeater' || lastPlace === 'doorHeater';
  const isDoor = /\b(?:door|frame)\b/i.test(words) || (wasDoor && !/\bdefrost\b/i.test(words));
  return judge(isDoor ? 'doorHeater' : 'defrostHeater')(tags, frame);
};

/** Only what is said in amps is a compressor's current. */
const ofAmps: Means = (tags, frame) =>
  amountIn(tags).unit === 'A' ? judge('compressorCurrent')(tags, frame) : null;

/** A test passes, and a vacuum by where it goes; whatever else was read last is as it should be, or not. */
const passes: Means = (tags, frame) =>
  frame.context.lastQuantity === 'testPressure'
    ? judge('pressureTest')(tags, frame)
    : frame.context.lastQuantity === 'vacuum'
      ? ask({ ask: 'trend', about: 'vacuum' })
      : ask({ ask: 'compare', about: null });

/** "Is that dry": of a vacuum that is pulled or held. */
const dryness: Means = (tags, frame) =>
  frame.context.lastQuantity === 'vacuum' ? passes(tags, frame) : null;

const CUT_OUTS = { high: 'highCutoutPressure', low: 'lowCutoutPressure' } as const;

const cutOutTarget: Means = (_tags, { context: { lastPart, lastPlace, lastQuantity } }) => {
  const last = [lastPart, lastPlace, lastQuantity];
  const isLow = last.some((one) => one === 'lowPressureSwitch' || one === 'lowCutinPressure');
  return ask({ ask: 'target', about: isLow ? CUT_OUTS.low : CUT_OUTS.high });
};

const targetOf =
  (about: 'highCutoutPressure' | 'lowCutoutPressure' | 'lowCutinPressure'): Means =>
  () =>
    ask({ ask: 'target', about });

/** A pair of pressures: where it comes on and where it goes off. */
const fanPair: Means = () => ({
  questions: [
    { ask: 'target', about: 'fanCutinPressure' },
    { ask: 'target', about: 'fanCutoutPressure' },
  ],
});

const FAN_CONTROL = '(fan [(cycling|cycle|pressure)] (control|switch)|fan cycling)';
const GOOD =
  '(good|bad|ok|weak|any good|all right|shot|gone|within tolerance|in tolerance|up to spec|to spec|reading right|low)';
const THE = '[(the|that|this|my|your)]';
const HIGH = '(high pressure|high side|head pressure|high)';
const LOW = '(low pressure|low side|suction pressure|suction|low)';
const CONTROL = '(switch|control|cut out|safety)';
// "its" reaches a rule as "it is".
const WHERE_SET =
  '(where [it|it is] [is] [set|supposed to]|where it is set|where it should|where it is supposed to|at [(the|it is)] setting|early|late|too early|too soon|too late|on time|right)';
const TRIPS = '(trip|tripping|trips|open|opening|opens|cut out|cutting out|tripped)';
const SET_WHERE = '(set|be set|be set at|be set to|be at|be)';

const UNIT = '(it|this|this thing|this unit|she|[the] head)';
const HOT =
  '([the] hottest day|[a] <amount> [degree] (day|weather|heat)|july|august|the (summer|heat)|hot weather)';

const tripsWhereSet = (side: string): string =>
  `(is|does|did|has) ${THE} ${side} ${CONTROL} ${TRIPS} ${WHERE_SET}`;

/** Whether a part, a test or a control is as it should be, and what a control should be set at. */
export const JUDGED_QUESTIONS: readonly Rule[] = [
  rule(
    `how (far|much) (off|is|out) [(is|off|out)] ${THE} (leg|phase|line) [(off|out|high|low)] [(from|of|than|compared to|against)] [the other (two|legs|ones|phases)]`,
    judge('voltageImbalance'),
    { unheard: true, examples: ['how far off is that leg from the other two'] },
  ),
  rule(
    `((what is|how is|check|give me|how much is|figure) ${THE} (current|amp|amperage|amps) (imbalance|unbalance|balance)|(are|is) ${THE} (amps|currents|current|line currents) (balanced|even|imbalanced|out of balance))`,
    judge('currentImbalance'),
    { examples: ['how is my current balance', 'are the amps balanced'] },
  ),
  rule(
    `((is there|do i have|do we have|have i got|could there be|does it have) [(any|some)] (air|non condensables|noncondensables) [(in (it|there|here|the system|the condenser|this|the charge))]|is it (air|non condensables|noncondensables))`,
    judge('nonCondensables'),
    { examples: ['is there air in it', 'do i have air in the system'] },
  ),
  rule(
    `(is|are|how is) ${THE} ${FOOD} [still] (safe|all right|ok|good|too warm|warm|any good|spoiled|bad|gone|ruined) [to (keep|sell|eat|use|serve)]`,
    judge('food'),
    { examples: ['is the food all right', 'is the product safe'] },
  ),
  rule(
    `(what|how) (do|should|can|would|will) (i|we|you) (tell|say to|advise|answer) ${THEM} [(about|on)] [(the|their|that|all that|this)] ${FOOD}`,
    judge('food'),
    { examples: ['what do i tell them about the food'] },
  ),
  rule(`[(and|so)] (what|how) about (the|their|that|this|all that) ${FOOD}`, judge('food'), {
    examples: ['what about the food'],
  }),
  rule(
    `what (do|should|can|will) (i|we|they|he|she) (do|be doing) (with|about) (the|their|that|all that|this|all the) ${FOOD}`,
    judge('food'),
    { examples: ['what should they do with the chicken'] },
  ),
  rule(
    `(do|does|should|will) (they|we|he|she|the customer|customer|i) [(need|have|got)] [to] (throw|toss|dump|discard|pitch|get rid of|lose) [(out|away)] (it|it all|everything|that|this|them|${THE} ${FOOD}) [(out|away|now)]`,
    judge('food'),
    { examples: ['do they have to throw it out'] },
  ),
  rule(
    `how long (can|could|will|is) ${THE} ${FOOD} [(good|ok|safe|all right)] [(to|for)] [(sit|stay|last|be|hold|keep|go|sit out)] [(at|in there|like that|out|sitting)] [(at)] [<amount>] [(in there|like that|now)]`,
    judge('food'),
    {
      unheard: true,
      only: (frame) =>
        /\b(?:sit|stay|last|hold|keep|go|good|safe|ok)\b/i.test(frame.wordsOf(frame.span)),
      examples: ['how long can that food sit at forty one'],
    },
  ),
  rule(
    `(any|is any|is there any|does any|do any|does anything|does any of) [of] [(the|their|that)] [${FOOD}] (need|needs|have|has|got) to [be] (tossed|thrown (out|away)|dumped|trashed|discarded|go|get tossed|pitched)`,
    judge('food'),
    { examples: ['any product need to be tossed'] },
  ),
  rule(
    `(can|could|should|may) (they|we|he|she|the customer|customer) [still] (keep|sell|use|serve|save|eat) ${THE} ${FOOD} [still]`,
    judge('food'),
    { examples: ['can they keep the product'] },
  ),
  rule(
    `(is ${THE} [(run|running)] (capacitor|cap) [(still|really|actually)] ${GOOD}|(how is|check|test|what about) ${THE} [(run|running)] (capacitor|cap) [${GOOD}])`,
    judgeCan,
    {
      examples: ['is the capacitor good', 'how is the run cap'],
    },
  ),
  heardRule('is the start capacitor good', judge('startCapacitor'), {
    examples: ['is the start capacitor good'],
  }),
  rule(
    `((is|how is|check|test|what about) ${THE} start (capacitor|cap) [(still|really|actually)] [${GOOD}])`,
    judge('startCapacitor'),
    { examples: ['is the start cap any good'] },
  ),
  rule(
    `(what|where) should ((i|we|you) set ${THE} [condenser] ${FAN_CONTROL} [(at|to)]|${THE} [condenser] ${FAN_CONTROL} ${SET_WHERE}|${THE} [condenser] (fan|fans) (cut in|come on|cut out|go off|cycle|kick on) [and (out|off)] [at])`,
    fanPair,
    { examples: ['what should the fan control be set at'] },
  ),
  rule(
    `(can|could|should|will) ${THE} ${FOOD} (stay|be kept|be sold|be used|go back [in]|be ok|make it|last) [(in there|here|tonight|in it)]`,
    judge('food'),
    { examples: ['can the food stay in there'] },
  ),
  rule(
    `([(are|do)] (those|these|the|my) windings (look|check out|sound|good) [(ok|good|right|all right)] [to you]|(are|how are) ${THE} [compressor] windings [${GOOD}|open|shorted]|[(do|does)] (that|those|they|these) add up|do [(the|that|those|these|my|your)] windings (add up|check out|look (good|ok|right))|(is|are) ${THE} (compressor|windings|motor) (shorted|open) [internally])`,
    judge('windings'),
    { examples: ['are the windings good', 'do the windings add up'] },
  ),
  rule(
    `((is|are) (it|${THE} (compressor [(motor|windings)]|motor|windings)) (grounded|going to ground|shorted to ground)|is ${THE} insulation ${GOOD}|does ${THE} insulation (pass|check out)|did it meg (out|good|ok))`,
    judge('insulation'),
    { examples: ['is the compressor grounded'] },
  ),
  rule(
    `should (it|she|${THE} compressor) be (pulling|drawing|running) (that|this|so) (much|many|high) [amps]`,
    judge('compressorCurrent'),
    { examples: ['should it be pulling that much'] },
  ),
  rule(
    `is ${THE} compressor (pulling|drawing) (too much|too many amps|high amps|high|over (nameplate|the nameplate|rla)|more than it should|ok|all right)`,
    judge('compressorCurrent'),
    { examples: ['is the compressor pulling too much'] },
  ),
  rule(
    '(is|are|would) <amount> (ok|too much|too high|high|normal|good|all right|a lot|right|fine|about right|in range) [(for|on)] [(this|the|that|my|a)] [size] (compressor|pump|motor)',
    ofAmps,
    { examples: ['is seven point eight amps ok for this compressor'] },
  ),
  rule(
    '(is|does|was) (that|it|she|this|the (system|vacuum)) [(look|seem|good and|tight and|all the way)] (dry|dried out) [(enough|yet|now|then)]',
    dryness,
    { unheard: true, alone: true, examples: [] },
  ),
  rule(
    '((does|did|will|would) (that|it|this) (pass|be a pass|count as a pass)|is (that|it|this) a (pass|fail|pass or [a] fail|good test|good vacuum))',
    passes,
    {
      examples: ['does that pass', 'is that a pass'],
    },
  ),
  rule(
    `(is|how is) ${THE} (supply|line|incoming) (voltage|power) [(${GOOD}|high|within (ten percent|range|limits|the nameplate)|in range)]`,
    judge('supplyVoltage'),
    { examples: ['is the supply voltage good'] },
  ),
  rule(
    `((what is|how is|check|give me|how much is|figure) ${THE} [(voltage|phase)] (imbalance|unbalance|balance)|(are|is) ${THE} (legs|phases|voltage|power|lines) (balanced|even|imbalanced|out of balance)|how much imbalance [(is there|do i have)]|~~((what is (that|it|this) [(give me|make|come to|work out to|at)]|what does (that|it|this) (make|give me|come to|work out to)) for [(an|the)] (imbalance|unbalance|balance))|is (that|this|it) [too] (much|big|bad|high|ok|good) [of] [an] [voltage] imbalance|(is|are) ${THE} (voltage|legs|phases) [too] (imbalanced|unbalanced|far off))`,
    judgeLegs,
    { examples: ['what is my imbalance'] },
  ),
  rule(
    `((did|does|is|has) ${THE} [(nitrogen|standing)] (pressure test|nitrogen|test|pressure|nitrogen test) (hold|holding|held|still holding|pass|good|drop|dropping|leak)|(did|has) (it|i|we) (lose|lost|drop|dropped|move|moved) any [(pressure|nitrogen|of it|at all)]|did it hold [(pressure|overnight)]|(has it held|is it still holding) [pressure]|is (that|it|this) [just] (the|a) (leak|temperature|temp) [(change|drop)] or [is it] [just] (the|a) (leak|temperature|temp) [(change|drop)]|is it (leaking|losing it) or (did|is) (it|that) [just] (cool|cooled|cooling|the temperature|temperature) [(off|down)])`,
    judge('pressureTest'),
    { examples: ['did the pressure test hold', 'did it lose any pressure'] },
  ),
  rule(tripsWhereSet(HIGH), judge('highPressureSwitch'), {
    examples: ['is the high pressure switch tripping early'],
  }),
  rule(tripsWhereSet(LOW), judge('lowPressureSwitch'), {
    examples: ['did the low pressure switch open late'],
  }),
  rule(
    `(is|does|did) (it|that|${THE} (switch|control)) ${TRIPS} (early|late|too early|too soon|too late|where it is set|where it should)`,
    judgeLastControl,
    { examples: ['is it tripping early'] },
  ),
  rule(
    `((is|how is) ${THE} (discharge [line]|hot gas line) [(temp|temperature)] [too] (hot|cool|cold)|how hot is too hot (on|for|at) ${THE} discharge [line]|how hot (can|should|may|does) ${THE} discharge [line] (get|be|run|go))`,
    judge('dischargeLine'),
    { examples: ['is the discharge line too hot'] },
  ),
  rule(
    `((what is|what would be|figure|give me|calculate) ${THE} [annual] leak rate|(am i|are we|is it|is this) over [the] leak (rate|limit|threshold|trigger)|is (it|this|that) [a] reportable [leak])`,
    judge('leakRate'),
    { examples: ['what is the leak rate'] },
  ),
  rule(
    `[${TELL}] [(what|how many|how much)] (amps|ohms|current|resistance|reading) (should|ought|would|does|will) (a|an|the|this|that|my) [new] [(defrost|door|frame)] (heater|heaters|element) [to] (pull|draw|read|be|show|have|take|be pulling|be drawing|give|measure) [(at|for me)]`,
    judgeHeater,
    { unheard: true, examples: ['what amps should the heater pull'] },
  ),
  ...(['defrost', 'door'] as const).map((which) =>
    rule(
      `(what should ${THE} ${which} (heater|heaters) (draw|pull|be drawing|be pulling|amp [out]|be)|(is|are|how is|how are) ${THE} ${which} (heater|heaters) (${GOOD}|drawing right|pulling right|burned out|burnt out))`,
      judge(`${which}Heater`),
      { examples: [`what should the ${which} heater draw`] },
    ),
  ),
  rule(
    `[${TELL}] what (should|ought|would) (a|the|this|that|my) [new] [(defrost|door|frame)] (heater|heaters|element) [to] (read|ohm [out] [at]|measure [at]|show|amp [out] [at]|draw|pull|be|be reading|come out at)`,
    judgeHeater,
    { unheard: true, examples: ['what should a defrost heater read'] },
  ),
  rule(
    `[${TELL}] what should i (see|read|get|have) (on|at|across|through|off) (a|the|this|that|my) [new] [(defrost|door|frame)] (heater|heaters|element)`,
    judgeHeater,
    { unheard: true, examples: ['what should i read across the heater'] },
  ),
  rule(
    `(what|where) should (i|we|you) set ${THE} ${HIGH} [pressure] ${CONTROL} [(at|to)]`,
    targetOf('highCutoutPressure'),
    { examples: ['where should i set the high pressure cut out'] },
  ),
  rule(
    `(what|where) should ${THE} ${HIGH} [pressure] ${CONTROL} ${SET_WHERE}`,
    targetOf('highCutoutPressure'),
    { examples: ['what should the high pressure switch be set at'] },
  ),
  rule(
    `(what|where) should (i|we|you) set ${THE} ${LOW} [pressure] [(switch|control)] cut in [(at|to)]`,
    targetOf('lowCutinPressure'),
    { examples: ['where should i set the low pressure cut in'] },
  ),
  rule(
    `(what|where) should ${THE} ${LOW} [pressure] [(switch|control)] cut in ${SET_WHERE}`,
    targetOf('lowCutinPressure'),
  ),
  rule(
    `(what|where) should (i|we|you) set ${THE} ${LOW} [pressure] ${CONTROL} [(at|to)]`,
    targetOf('lowCutoutPressure'),
    { examples: ['where should i set the low pressure cut out'] },
  ),
  rule(
    `(what|where) should ${THE} ${LOW} [pressure] ${CONTROL} ${SET_WHERE}`,
    targetOf('lowCutoutPressure'),
    { examples: ['what should the low pressure control be set at'] },
  ),
  rule(
    `(what|where) should ((i|we|you) set ${THE} cut out [(at|to)]|${THE} cut out ${SET_WHERE})`,
    cutOutTarget,
    { examples: ['what should the cut out be set at'] },
  ),
  rule(
    `((what will|what would|where will|where would) [the] (head|head pressure|it) (be|run|do|go to|get to) (on|in) [the] hottest day|(will|would) it (make it|trip|hold|be ok|survive|cut out|stay on|run) (on|in) [the] hottest day|how (much (room|margin)|close) (will|would|do|am) i [(have|be|get)] [left] [to (the cut out|tripping|it)] (on|in) [the] hottest day|[and] (what|how) about [on] [the] hottest day|what (is|will) (it|the head|head) [going to] (do|be|run|go to) when it is <amount> (out|outside|up) [(here|there)]|what (is|will) (it|the head|head) [going to] (do|be|run|go to) (when it gets hot|in july|in august|in the summer|in the heat))`,
    plain('hottestDay'),
    { examples: ['what will head be on the hottest day', 'will it trip on the hottest day'] },
  ),
  rule(
    `((will|would|is|can|could) ${UNIT} [going to] (make it|handle it|hold up|trip|be ok|survive|stay on)|how (will|would|is) ${UNIT} [going to] (do|run|hold up|act|look)) (on|in|through) ${HOT}`,
    plain('hottestDay'),
    { unheard: true, examples: ['how will it hold up in july'] },
  ),
];
