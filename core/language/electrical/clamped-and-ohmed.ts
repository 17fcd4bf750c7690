import type { Tags } from '../../grammar/nodes.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { amps } from './circuit-trace.ts';
import { electrical, GOT, one } from './electrical.ts';
import { nameplate } from '../facts/facts.ts';
import { finding } from '../findings/finding-of.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { acrossIt } from './meter-talk.ts';
import { reading } from '../readings/reading-means.ts';
import { type Frame, type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { wordsBehind } from '../words/clause-start.ts';
import { numberIn, partId, placeId, stateId, tagsIn } from '../slots.ts';
import { remark } from '../plain-means.ts';

/** "Clamp on common shows five point five": a clamp shows amps, and of what it was put around only some has a place. */
const clamped: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  const place = placeId(tags['place']);
  const isMotor = place !== null && MOTORS.includes(place);
  return unit === null || unit === 'A'
    ? one(readingOf('current', amountIn(tags), { place: isMotor ? place : null, frame }))
    : null;
};
const MOTORS: readonly PlaceId[] = ['compressor', 'condenserFan', 'evaporatorFan'];

const settled: Means = (tags, frame) =>
  tags['whole'] === undefined ? clamped(tags, frame) : amps(tags, null, frame);

/** "Over RLA, nineteen against fourteen": what it draws, and what its plate allows. */
const againstPlate: Means = (tags, frame) => {
  const drawn = clamped(tags, frame);
  const rated = tagsIn(tags['plate']);
  const plate = rated === null ? null : nameplate('ratedLoadAmps')(rated, frame);
  return drawn === null || plate === null ? null : { ...plate, ...drawn };
};

/** "Common to both": each winding against common. */
const commonToBoth: Means = (tags, frame) => {
  const readings = (['commonStart', 'commonRun'] as const).flatMap(
    (place) => electrical(tags, place, frame) ?? [],
  );
  return readings.length === 2 && readings.every(({ quantity }) => quantity === 'resistance')
    ? { readings }
    : null;
};

const megged: Means = (tags, frame) => {
  const { unit } = amountIn(tags);
  return unit === null || unit === 'Mohm'
    ? one(
        readingOf('insulationResistance', amountIn(tags), { place: placeId(tags['place']), frame }),
      )
    : null;
};

/** Whose resistance is told in thousands. */
const thousands = (value: number, unit: 'ohm' | 'kohm', frame: Frame): Meaning | null =>
  one(
    readingOf(
      'resistance',
      { value, low: null, high: null, unit, hedged: false, overlimit: false },
      { place: null, frame },
    ),
  );

/** "Probe ohms at thirty two six fifty": thousands and hundreds, as meters show a thermistor. */
const inThousands: Means = (tags, frame) => {
  const whole = numberIn(tagsIn(tags['whole'])?.['number']);
  const rest = numberIn(tagsIn(tags['rest'])?.['number']);
  const isThermistors =
    whole !== null && rest !== null && whole > 0 && whole < 100 && rest >= 100 && rest < 1000;
  return isThermistors ? thousands(whole * 1000 + rest, 'ohm', frame) : null;
};

/** "Air probe reads ten k, at seventy seven"; but "a ten k sensor" is what was fitted. */
const inKilohms: Means = (tags, frame) => {
  if (KIND.test(wordsBehind(frame, 1))) return null;
  const value = numberIn(tagsIn(tags['whole'])?.['number']);
  const read = value === null || value >= 1000 ? null : thousands(value, 'kohm', frame);
  const isAt = tagsIn(tags['at']) !== null;
  return read && (isAt ? { ...read, remarks: [frame.wordsOf(frame.span)] } : read);
};

const KIND = /^(?:probes?|sensors?|thermistors?|ones?|type|ntc)$/;

const BY_RANGE: Readonly<Record<string, QuantityId>> = {
  ohms: 'resistance',
  volts: 'voltage',
  amps: 'current',
  microfarads: 'capacitance',
  megohms: 'insulationResistance',
};

/** "Meter's on ohms and I get fourteen" */
const onRange: Means = (tags, frame) => {
  const quantity = typeof tags['range'] === 'string' ? BY_RANGE[tags['range']] : undefined;
  if (quantity === undefined) return null;
  return one(readingOf(quantity, amountIn(tags), { place: placeId(tags['place']), frame }));
};

const TERMINALS: readonly (PartId | null)[] = [
  ...(['startRelay', 'defrostTimer', 'contactor', 'temperatureControl', 'controller'] as const),
  ...(['overload', 'highPressureSwitch', 'lowPressureSwitch', 'defrostTermination'] as const),
];

/** "Potential relay, five to two, reads open": the numbers name its terminals. */
const openBetween: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const state = stateId(tags['state']);
  return part === null || state === null || !TERMINALS.includes(part)
    ? null
    : { findings: [finding(part, state, frame)] };
};

/** "Fifty two hundred ohms on the relay coil, two to five" */
const ohmsBetween: Means = (tags, frame) =>
  amountIn(tags).unit === 'ohm' ? one(electrical(tags, placeId(tags['place']), frame)) : null;

/** "Transformer primary ohms at eighteen" */
const ofTransformer: Means = (tags, frame) => {
  const { unit, overlimit } = amountIn(tags);
  const isOhms = unit === 'ohm' || (unit === null && !overlimit);
  const read = isOhms ? one(readingOf('resistance', amountIn(tags), { place: null, frame })) : null;
  return read && { ...read, names: 'transformer' };
};

/** "… and secondary's wide open": only a transformer has one. */
const itsWinding: Means = (tags, frame) => {
  const state = stateId(tags['state']);
  const isTold = state === 'open' || state === 'failed' || state === 'burnt' || state === 'ok';
  return isTold ? { findings: [finding('transformer', state, frame)] } : null;
};

const CANS: readonly (PlaceId | null)[] = ['runCapacitor', 'startCapacitor'];
const MARK = { low: null, high: null, unit: 'uF', hedged: false, overlimit: false } as const;

/** "Run cap's weak, thirty one on a thirty five": what was found, what was read, and what it is marked. */
const weakAndRead: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const part = partId(place ?? undefined);
  const state = stateId(tags['state']);
  const value = numberIn(tagsIn(tags['rated'])?.['number']);
  if (!CANS.includes(place) || part === null || state === null || value === null) return null;
  const read = readingOf('capacitance', amountIn(tags), { place, frame });
  const marked = reading('ratedCapacitance', { ...MARK, value }, frame);
  if (read === null || marked === null) return null;
  return { readings: [read, marked], findings: [finding(part, state, frame)] };
};

/** "Cap checks zero" */
const deadCan: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  return CANS.includes(place)
    ? one(readingOf('capacitance', amountIn({ number: 0 }), { place, frame }))
    : null;
};

/** "Under load test on the cap, three point one amps and three eighty volts" */
const underLoad: Means = (tags, frame) => {
  const place = placeId(tags['place']);
  const readings = [tags, tagsIn(tags['other'])].flatMap((each) =>
    each === null || amountIn(each).unit === null ? [] : (electrical(each, place, frame) ?? []),
  );
  return readings.length === 2 ? { readings } : null;
};

/** What its side stood at as it went off: "it went off on low pressure at four pounds". */
const wentOffAt =
  (part: 'highPressureSwitch' | 'lowPressureSwitch', quantity: QuantityId): Means =>
  (tags, frame) => {
    const found = reading(quantity, amountIn(tags), frame);
    return found?.quantity !== quantity
      ? null
      : {
          readings: [{ ...found, event: 'tripped' }],
          findings: [finding(part, 'tripped', frame)],
        };
  };

const BY_HEAT: readonly (PartId | null)[] = ['temperatureControl', 'defrostTermination'];
const isHeat = (tags: Tags): boolean =>
  [null, 'degrees', 'degF', 'degC'].includes(amountIn(tags).unit);

/** "Temp control's open at forty four degrees": found so, and kept with what it was at. */
const openAtHeat: Means = (tags, frame) => {
  const part = partId(tags['part']);
  return part === null ? null : switchedAt(part, tags, frame);
};
const itIsOpenAt: Means = (tags, frame) => ({
  ofIt: {
    means: (part) => switchedAt(part, tags, frame),
    inSentence: false,
    otherwise: { remarks: [frame.wordsOf(frame.span)] },
  },
});
function switchedAt(part: PartId, tags: Tags, frame: Frame): Meaning | null {
  const state = stateId(tags['state']);
  const isSwitched = state === 'open' || state === 'closed';
  if (!BY_HEAT.includes(part) || !isSwitched || !isHeat(tags)) return null;
  return { findings: [finding(part, state, frame)], remarks: [frame.wordsOf(frame.span)] };
}

/** "One sixteen … at the compressor": of the pair that was named. */
const atPins: Means = (tags, frame) => one(electrical(tags, placeId(tags['place']), frame));

const SHOWS =
  '(shows|reads|says|is (showing|reading|at)|showing|reading|read|showed|gives me|has|i (have|got|get)|i am (getting|reading|seeing)|at)';
const WIRE =
  '((common|run|start|hot|black|red|white|line|load) [(wire|leg|lead|terminal)]|(each|one|either|the) (leg|wire|lead)|<leg>|(t|l) <nth:which>|<place>|it)';
const ONLY = '[(only|just|still|right at)]';
const OHMS = '(ohms|ohmed|ohm|reads|read|is reading|checks|tests|measures|measured|shows|is)';
const PROBE =
  '[(the|my|this|that|air|box|coil|evap|discharge|return|defrost|product)] (probe|sensor|thermistor)';
const SAYS =
  '[(it|she|unit|the unit|compressor|the compressor|this thing)] [(is|was|just|keeps|has)] (went|goes|going|kicked|cut|tripped|dropped|trips|kicks|cuts|shut|drops) [(off|out|down)]';
const POWERED = '(went|kicked|cut|tripped|dropped|shut|goes|kicks|cuts|trips|drops)';

/** "Two twelve at the contactor, sorry, two twenty one" */
const corrected: Means = (tags, frame) => {
  const { unit, value } = amountIn(tags);
  const place = placeId(tags['place']);
  const wrong = tagsIn(tags['wrong']);
  if (wrong === null || value === null) return null;
  const said = unit ?? amountIn(wrong).unit;
  return one(electrical(said === null ? tags : { ...tags, unit: said }, place, frame));
};

/** What clamps and ohmmeters show, told of what they were put to, and what cans hold of what they are marked. */
export const CLAMP_RULES: readonly Rule[] = [
  rule(
    `${GOT} <amount:wrong> (at|across|on|over|into|through|from|to|in|between) <the> <place> [<pause>] (<correction>|~~check that|~~(no|wait) check that|~~i misread (it|that)) [<pause>] [(it is|i mean|that is)] <amount>`,
    corrected,
    { unheard: true, examples: ['two twelve at the contactor sorry two twenty one'] },
  ),
  rule(
    `[(the|my|an|a)] (clamp|amp clamp|clamp meter|amp meter|ammeter|amp probe) (on|around|at) [the] ${WIRE} ${SHOWS} ${ONLY} <amount>`,
    clamped,
    { unheard: true, examples: ['clamp on common shows five point five'] },
  ),
  rule(
    `[(the|my)] (inrush|in rush|(starting|start up|startup|start) (amps|current|draw|amp draw)) [(amps|current|draw)] <link> <amount>`,
    clamped,
    { unheard: true, examples: ['inrush was thirty nine'] },
  ),
  rule(
    `[(the|my|running)] (amps|amp draw|current|amperage) (settled|leveled|settles|dropped|came|fell|comes|drops) [right] [(down|out|off|in|back down)] [<pause>] [(to|at|it is|now)] <dropped> [(after <duration:after>|once it (got going|settled [down]|started)|when it (settled|leveled))]`,
    settled,
    { unheard: true, examples: ['amps settled down seven two after a minute'] },
  ),
  rule(
    `[(the|my|running)] (amps|amp draw|current|amperage) (settled|leveled|settles|dropped|came|fell|comes|drops) [right] [(down|out|off|in|back down)] [<pause>] [(to|at|it is|now)] (<amount>|<droppedSurely>) [(after <duration:after>|once it (got going|settled [down]|started)|when it (settled|leveled))]`,
    settled,
    { unheard: true, examples: ['amps settled down six point two after a minute'] },
  ),
  rule(
    '[(it is|we are|i am|that is|way|running|well)] (over|above|past|under|below) [(the|it is)] (rla|r l a|rated load|nameplate [amps]|plate [amps]|fla|f l a|full load) [<pause>] [(at|it is|pulling|drawing|with)] <amount> (against|over|on|versus|out of|to) [(a|an)] <amount:plate>',
    againstPlate,
    { unheard: true, examples: ['over rla nineteen against fourteen'] },
  ),
  rule(
    `(${GOT} <amount> (from|on|at) common to both [(windings|of them)]|common to both [(windings|of them)] [${SHOWS}] <amount>)`,
    commonToBoth,
    { unheard: true, examples: ['over limit from common to both'] },
  ),
  rule(
    `[(the|my|a)] (megohm|meg ohm|meg|megger|insulation) (reading|test|check) (on|at|for|from) <the> <place> [<pause>] [${SHOWS}] <amount>`,
    megged,
    { unheard: true, examples: ['meg reading on common to ground two hundred'] },
  ),
  rule(`${PROBE} ${OHMS} [out] [at] <short:whole> <short:rest> [ohms]`, inThousands, {
    unheard: true,
    examples: ['probe ohms at thirty two six fifty'],
  }),
  rule(
    `${PROBE} (${OHMS}|~~(comes|came) out|~~is coming out) [out] [at] <number:whole> (k|k ohms|kilohms|kilo ohms) [<pause>] [(at|and it is) <amount:at>]`,
    inKilohms,
    { unheard: true, examples: ['air probe reads ten k at seventy seven'] },
  ),
  ...(
    [
      ['ohms', '(ohms|resistance|the ohm scale)'],
      ['volts', '(volts|voltage|ac|a c)'],
      ['amps', '(amps|current)'],
      ['microfarads', '(microfarads|capacitance|microfarad)'],
      ['megohms', '(megohms|megs)'],
    ] as const
  ).map(([range, said]) =>
    rule(
      `[(the|my)] meter is [set] (on|to) ${said} [<pause>] [(and|so)] [(i (get|have|got|read)|i am (getting|reading|seeing)|it (reads|shows|says)|it is (reading|showing))] ${ONLY} <amount> [(on|at|across|through) <the> <place>]`,
      onRange,
      { unheard: true, tags: { range }, examples: [`meter is on ${range} and i get fourteen`] },
    ),
  ),
  rule(
    `<the> <part> [<pause>] [(terminals|terminal|between|from|pins)] <nth:first> (to|and) <nth:other> [<pause>] (reads|is|shows|checks|tests|ohms|is showing|is reading) [out] <very> <state>`,
    openBetween,
    { unheard: true, examples: ['potential relay five to two reads open'] },
  ),
  rule(
    `${GOT} <amount> (on|across|through|at|between|of|for) <the> <place> [coil] [<pause>] [(terminals|terminal|between|from|pins)] <nth:first> (to|and) <nth:other>`,
    ohmsBetween,
    { unheard: true, examples: ['fifty two ohms on the start relay coil two to five'] },
  ),
  rule(
    `[the] transformer [is] (primary|secondary) [(side|winding|coil)] ${OHMS} [out] [at] <amount>`,
    ofTransformer,
    {
      unheard: true,
      examples: ['transformer primary ohms out at eighteen'],
    },
  ),
  rule(
    `[(and|but)] [the] [transformer] (secondary|primary) [(side|winding|coil)] (is|reads|ohms|checks|shows|was) [out] <very> <state>`,
    itsWinding,
    { unheard: true, examples: ['secondary is wide open'] },
  ),
  rule(
    `<the> <place> (is|looks|tests|checks|seems|reads|was) <very> <state> [<pause>] [(at|it is|it (reads|read|checks)|reading|reads|only|i (got|get|have))] ${ONLY} <amount> (on|out of|off|of|for) (a|an) [(marked|rated)] <number:rated> [(microfarad|mfd|uf|microfarads)]`,
    weakAndRead,
    { unheard: true, examples: ['run cap is weak thirty one on a thirty five'] },
  ),
  rule(
    '<the> <place> (checks|tests|reads|measures|metered|checked|tested|read|measured|shows|showed) [out] [at] (zero|nothing|dead|zip)',
    deadCan,
    { unheard: true, examples: ['run cap checks zero'] },
  ),
  rule(
    `[(i|we)] [(did|ran|had)] [(a|an)] [under] load (test|tested|check|checked) (on|at) <the> <place> [<pause>] [${SHOWS}] <amount> [(and|at)] <amount:other>`,
    underLoad,
    {
      unheard: true,
      examples: ['under load test on the run cap three amps and three eighty volts'],
    },
  ),
  rule(
    `[(and|but)] [it] (has|has got|is got|is getting|gets|sees|<got>) ${ONLY} <amount> (at|across|on|to|through|into) it`,
    acrossIt,
    { unheard: true, examples: [] },
  ),
  rule(
    '<the> <place> (at|on) the (compressor|compressor terminals|pins|plug|terminals) (has|has got|is got|got|reads|shows|is|i have|i got|i have got) [got] <amount>',
    atPins,
    { unheard: true, examples: ['common to run at the compressor is two point two ohms'] },
  ),
  ...(
    [
      [
        'highPressureSwitch',
        'headPressure',
        '(high (pressure|head|side)|head pressure|[the] head)',
      ],
      ['lowPressureSwitch', 'suctionPressure', '(low (pressure|side|suction)|suction)'],
    ] as const
  ).map(([part, quantity, side]) =>
    rule(
      `(${SAYS}|[(it|she)] ${POWERED} [(off|out)]) on [the] ${side} [(switch|control|safety|cut out)] at <amount>`,
      wentOffAt(part, quantity),
      {
        unheard: true,
        examples: [
          part === 'lowPressureSwitch'
            ? 'it went off on low pressure at four pounds'
            : 'it went off on high pressure at four hundred',
        ],
      },
    ),
  ),
  rule('<the> <part> (is|was|reads|is still) <very> <state> at <amount>', openAtHeat, {
    unheard: true,
    examples: ['thermostat is open at forty four degrees'],
  }),
  rule(
    '[(and|but|so)] (it is|it reads) <very> <state> [(right now|now|still)] at <amount>',
    itIsOpenAt,
    { unheard: true, examples: [] },
  ),
  rule(
    '[(it is|we are|unit is)] [on] [(the|an|a)] extension cord [<pause>] [(it is|is)] [(a|an)] <size>',
    remark,
    {
      unheard: true,
      examples: ['extension cord sixteen gage fifty foot'],
    },
  ),
];
