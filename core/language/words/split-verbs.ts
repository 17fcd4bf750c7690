import type { WorkKindId } from '../../terms/names.ts';

/** Particles that stand behind the part: "blew the drain line out". */
export const SPLIT: readonly (readonly [WorkKindId, string])[] = [
  [
    'clean',
    '(blew|cleaned|cleared|flushed|vacuumed|wiped|snaked|brushed and vacuumed) <the> [(whole|entire)] <part> (out|off|up|down) [with (nitrogen|c o two|co two|air|compressed air|water|a brush|a vacuum|the shop vac|cleaner|coil cleaner|a rag)]',
  ],
  ['wash', '(hosed|washed|rinsed|sprayed) <the> [(whole|entire)] <part> (out|off|down)'],
  ['brush', 'brushed <the> <part> (out|off|down)'],
  ['replace', '(swapped|changed|switched) <the> [(old|bad)] <part> (out|for a new one)'],
  ['remove', '(took|pulled|cut) <the> [(old|bad)] <part> (out|off)'],
  [
    'tighten',
    '(tightened|snugged|strapped|clamped|screwed|cinched|torqued|cranked|bolted|zip tied|taped) <the> <part> [back] (up|down|on|in|tight) [tight]',
  ],
  [
    'repair',
    '(put|crimped|installed|stuck) (a|two|some|new|<the>) [(new|fresh)] (end|ends|lug|lugs|spade|spades|crimp|crimps|connector|connectors) on (it|them|<the> <part>)',
  ],
  [
    'leakCheck',
    '(went over|checked|hit|went around) [all] <the> [<bit>] <part> with (soap|bubbles|[soap] bubbles|<the> (sniffer|detector|[electronic] leak detector|electronic detector))',
  ],
  ['reset', '(hit|pushed|pressed|punched|popped) (the|a) reset [button] (on|at|for) <the> <part>'],
  [
    'adjust',
    '(backed|opened|closed|turned|screwed|ran|adjusted) <the> <part> [(off|in|out|up|down|open)] [by] [about] ([a] <number> [of a]|a|another) (turn|turns|hair|touch|bit|little)',
  ],
  [
    'adjust',
    '(backed|opened|closed|turned|screwed|ran) (off|in|out|up|down) <the> <part> [by] [about] ([a] <number> [of a]|a|another) (turn|turns|hair|touch|bit|little)',
  ],
  ['brush', 'took a [(stiff|soft|wire|nylon|fin)] brush to <the> <part> [fins]'],
  [
    'adjust',
    '(turned|lowered|raised|bumped|set|opened|closed|adjusted) <the> <part> [(up|down|back)] [by] [about] <number> (degrees|degree|psi|pounds|clicks|notches)',
  ],
  [
    'clean',
    'gave <the> <part> (a|another) [(good|quick|thorough|real good)] (cleaning|clean|once over|wipe down)',
  ],
  [
    'brush',
    'gave <the> <part> (a|another) [(good|quick|thorough|real good)] (brushing|brush|brush down)',
  ],
  [
    'wash',
    'gave <the> <part> (a|another) [(good|quick|thorough|real good)] (washing|wash|rinse|hosing|bath)',
  ],
  [
    'replace',
    '(put|got|have|stuck|threw|slapped|dropped|popped|mounted|ran|made|fitted) [in] [(a|some|me a)] new <part> [(in|on|for|to) [(it|there|~~(the|that) (left|right|middle|center|top|bottom|front|back|first|second|third|far|bad) one)]] [[<pause>] [(a|the|it is a)] <number:size> (degree|amp|volt|microfarad|watt|inch) [(one|stat|klixon)]]',
  ],
];

export const IT = '(it|them|that|the thing|her|him)';

const WITH =
  '[with [(some|dry|compressed|~~the|~~my)] (nitrogen|c o two|co two|air|water|hot water|a brush|a vacuum|the shop vac|cleaner|coil cleaner|soap|a rag|a snake|~~(brush|vacuum|shop vac)) [~~(and [(some|the|my|a)] (nitrogen|c o two|co two|air|water|brush|vacuum|shop vac|cleaner|coil cleaner|soap|rag))]] [at <amount>]';

/** The same where the part is only "it". */

export const SPLIT_IT: readonly (readonly [WorkKindId, string])[] = [
  ['clean', `(blew|cleared|flushed|vacuumed|wiped|cleaned) ${IT} (out|off|down|up|clear) ${WITH}`],
  ['wash', `(hosed|washed|rinsed|sprayed) ${IT} (out|off|down|clean) ${WITH}`],
  ['brush', `brushed ${IT} (out|off|down)`],
  [
    'replace',
    `((swapped|changed|switched) ${IT} out|(brazed|sweated|welded|soldered|wired|dropped|popped|screwed|threw|slapped|got) in (a new one|another one|the new one|a replacement)|got (a new one|another one) in|(put|stuck|installed|brazed|sweated|welded|soldered|wired|dropped|popped|screwed|slapped) [in] (a new one|another one|a replacement|new ones) [(in|back in)])`,
  ],
  ['remove', `(took|pulled|cut) ${IT} (out|off)`],
  ['tighten', `(tightened|snugged|strapped|clamped|screwed) ${IT} [back] (up|down|on)`],
];
