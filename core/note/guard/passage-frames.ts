import type { Passage, PassageField, PassageKind, PassageRole } from '../paragraphs/passage.ts';
import { COMPLAINT, LIKELY_CAUSE, SEEN, TOLD_CAUSE } from './reason-frames.ts';

/**
 * What a slot may stand between, word for word, as only that makes a number a "from" or a "to", and words a cause or a
 * complaint: `_` is the slot, `^` the start of a sentence, other slots stand by their roles. A slot must stand in a
 * frame of its own role, and in none of another role's.
 */
export type Frames = Readonly<Partial<Record<PassageRole, readonly string[]>>>;

const BECAUSE: readonly string[] = ['because _', ', as _', '^ as _ ,', 'reason : _'];

const SET: readonly string[] = [
  'set for _',
  'set to _',
  'the _ it is set',
  'with _ set',
  'point of _',
  'point : _',
  'point _',
];

const BOX_MOVED: Frames = {
  before: [
    'from _ to {after}',
    'at _ inside when we came and',
    'at _ inside ; since then',
    'box : _ before',
  ],
  after: [
    'from {before} to _',
    'came down to _',
    'come down to _',
    'rose to _',
    '{before} before , _ now',
  ],
  set: SET,
};

const BOX_READ: Frames = {
  after: [
    'was at _',
    'stayed at _',
    'held at _',
    'remained at _',
    'box at _',
    'we measured _',
    'we read _',
    'temperature read _',
    'temperature _',
  ],
  set: SET,
};

const OF_THE_KIND: Readonly<Record<PassageKind, Frames>> = {
  aim: { aim: ['to _'] },
  reason: {
    complaint: COMPLAINT,
    found: SEEN,
    cause: TOLD_CAUSE,
    suspects: ['points to _', 'point to _', 'comes down to _', 'come down to _', 'voltages : _'],
  },
  meaning: {
    effect: [
      'happens , _',
      'means _',
      'means : _',
      'is so , _',
      'state , _',
      'with that , _',
      'does : _',
      'like that , _',
      'is that _',
      'because _',
      'matters , as _',
      'for you : _',
      'matters : _',
    ],
  },
  done: {
    work: [
      'we _',
      'technician _',
      'it and _',
      'work and _',
      'done : _',
      'work : _',
      '^ on the visit , _',
      '^ on site , _',
      'in {time} on site : _',
      'in {time} on site , _',
      'on site ; _',
      'it , _',
      '^ _',
      'for {time} : _',
      'in {time} on the visit : _',
      'in {time} on the visit , _',
      'on the visit ; _',
    ],
    time: [
      'visit for _',
      'site for _',
      'time on site : _',
      'time on site _',
      'in _ on site',
      'with _ on site',
      'billable : _ on site',
      '; _ on site',
      'time on the visit : _',
      'time on the visit _',
      'time : _',
      'in _ on the visit',
      'with _ on the visit',
      'billable : _ on the visit',
      '; _ on the visit',
      'recorded , _ on the visit',
      'recorded , _ on site',
    ],
  },
  refrigerant: {
    added: [
      'put in _',
      'added _',
      'got _',
      'filled in _',
      'charged _',
      '_ of {kind} went in',
      '_ went in',
      '_ of {kind} added',
      '_ added',
      '_ of {kind} in',
      '_ in',
      '_ put in',
      '_ was put in',
      '_ was added',
      'billable refrigerant : _',
    ],
    recovered: [
      'took out _',
      'recovered _',
      '_ of {kind} came out',
      '_ came out',
      '_ of {kind} recovered',
      '_ recovered',
      '_ of {kind} out',
      '_ out',
      '_ of {kind} was taken out',
    ],
    lost: ['_ of {kind} was lost', '_ was lost', '_ of {kind} got away', 'lost _', '_ lost'],
    kind: ['of _', '^ _ :', 'refrigerant _ :'],
  },
  charge: {
    charge: [
      'now , by the scale , _',
      '^ by the scale , _',
      'holds _',
      'nameplate : _',
      'charge now _',
      'charge is _',
      'nameplate charge , _ by',
    ],
    missing: ['_ was missing', 'was _ short when'],
  },
  box: BOX_READ,
  product: {
    product: [
      'product was at _',
      'itself was at _',
      'product at _',
      'measured at _',
      'measured _',
      'gave _',
      'reading : _',
    ],
    productBefore: [
      'at _ when we came',
      'at _ at first',
      'measured _ at first',
      'product : _ at first',
    ],
    productAfter: ['_ later', 'at _ after that', 'later it was at _'],
    remark: ['noted : _', 'product : _', 'down _', 'note : _', 'we noted of the product : _'],
  },
  left: {
    left: [
      'left it , _',
      'so that _',
      'this : _',
      'stands , _',
      'stands now , _',
      'note that _',
      'know that _',
      'end of the visit _',
      'end of the visit : _',
      'left it : _',
      'left with _',
      'left : _',
      'the end : _',
    ],
    danger: [
      'on : _',
      'on , because _',
      'on , as _',
      'off : _',
      'off , because _',
      '^ because _ ,',
      '^ as _ ,',
    ],
  },
  todo: {
    todo: [
      'to _',
      'to be done : _',
      'this : _',
      'do : _',
      'this , because {because} : _',
      'this , as {because} : _',
      'do , {when} : _',
      'follow-up {when} : _',
      'recommended : _',
      'visit : _',
      'quote : _',
      'quoted : _',
      'follow-up : _',
      'follow-up work : _',
      'recommended work : _',
      'step : _',
      'steps : _',
      'recommendations : _',
      'advice : _',
      'recommendation : _',
      'following : _',
      'next : _',
    ],
    when: ['{todo} _', 'do , _ :', 'follow-up _ :'],
    because: BECAUSE,
    purpose: ['{todo} _', '{todo} , _', '{when} _', '{when} , _'],
  },
  comeBack: {
    when: [
      'back _',
      'back , _',
      'visit is _',
      'needed _',
      '^ _ we',
      'due _',
      'visit _',
      'scheduled _ :',
      '{purpose} : _',
    ],
    purpose: [
      'back _',
      'needed _',
      'due _',
      'visit _',
      '{when} _',
      '{when} , _',
      '{when} we will come back _',
    ],
    because: BECAUSE,
  },
  again: {
    date: ['on _', 'since _', 'of _'],
    foundBefore: [
      'same on {date} : _',
      'before , on {date} : _',
      'repeat of {date} : _',
      'on {date} too : _',
      'back since {date} : _',
      'same : _',
      'saw that _',
    ],
    undone: [
      'not reported done : _',
      'not reported done since then : _',
      'not reported done since : _',
      'not reported done since {date} : _',
      'not reported done since we recommended it on {date} : _',
      'recommended on {date} to _',
      'recommended then to _',
      'was recommended to _',
    ],
  },
};

const OF_THE_FIELD: Readonly<
  Partial<Record<PassageField, Readonly<Partial<Record<PassageKind, Frames>>>>>
> = {
  likely: {
    reason: { cause: LIKELY_CAUSE },
    meaning: {
      effect: [
        'so , _',
        'the cause , _',
        'it was , _',
        'that , _',
        'right , _',
        'means _',
        'means : _',
        'matters , as _',
        'the cause : _',
      ],
    },
  },
  overPlate: {
    charge: {
      difference: [
        '_ over the nameplate',
        '_ above the nameplate',
        '_ of it is over the nameplate',
      ],
    },
  },
  underPlate: {
    charge: {
      difference: ['_ under the nameplate', '_ below the nameplate', '_ short of the nameplate'],
    },
  },
};

/** The frames of a passage's own slots, what its fields say coming before what its kind does. */
export function framesOf({ kind, fields, slots }: Passage): Frames {
  const base = kind === 'box' && slots.before !== undefined ? BOX_MOVED : OF_THE_KIND[kind];
  return fields.reduce<Frames>((so, field) => ({ ...so, ...OF_THE_FIELD[field]?.[kind] }), base);
}
