import type { FindingStateId } from '../../terms/names.ts';

/** What settles on a coil or in a drain. */
export const DIRT =
  '(grease|dirt|dust|lint|flour|grime|hair|fuzz|cottonwood|crud|gunk|slime|mold|leaves|feathers|fur|debris|scale|cobwebs|sludge|algae)';

/** What a part is said to be, after "is". */
export const STATE_NAMES: Record<FindingStateId, readonly string[]> = {
  dirty: [
    'dirty',
    '~((limed|scaled|slimed|calcified|gunked) [(up|over)]|filthy|nasty|greasy|dusty|grimy|matted|caked [up]|fouled|cruddy|furred up)',
    `~(caked|loaded|coated|matted|covered|thick|furry|fuzzy|lined|solid|plastered) [(up|over)] with ${DIRT}`,
    `~(full of|covered in|wall to wall|nothing but|solid|plastered (with|in)|all) ${DIRT}`,
    `~(a|one) [(solid|thick|full|big)] (mat|carpet|blanket|layer|sheet|wall|rug) of ${DIRT}`,
    '~(disgusting|gross|a mess|furry|not clean|needs cleaning|never been cleaned)',
  ],
  plugged: [
    'plugged',
    'clogged',
    '~(plugged|clogged|stopped|packed|gummed) (up|solid|up solid)',
    '~(blocked|restricted|impacted|packed|choked|stopped up|obstructed|kinked) [off]',
    `~(plugged|clogged|packed|blocked|choked|stuffed|jammed|stopped) [(up|off|solid)] with (ice|${DIRT})`,
  ],
  iced: [
    'iced up',
    'frozen',
    '~iced [over]',
    '~(frozen|froze|frosted|frosting|icing) [(up|over|solid)]',
    '~(frosted|iced|icing) (up|over) solid',
    '~(a|one) [(big|giant|huge|great)] (block|sheet) of ice',
    '~(a|one) [(big|solid|giant|huge)] (chunk|hunk|lump) of (ice|frost)',
    '~(a|one) solid (block|sheet|brick) [of (ice|frost)]',
    '~(full of|covered in) (ice|frost)',
    '~(frozen|froze|iced) [up] solid',
    '~(all|solid|nothing but|mostly|a ball of|caked in) (ice|frost)',
    '~[like] (a skating rink|an ice rink|an igloo|a glacier|the north pole)',
  ],
  notRunning: [
    'not running',
    '~not (turning|spinning|starting|coming on|working|moving|pumping|turning on|kicking on)',
    '~(off|stopped|stalled|shut (off|down))',
    '~[just] sitting there [(dead|doing nothing|not (moving|turning|spinning))]',
    '~not (doing anything|doing a thing|even trying)',
  ],
  running: [
    'running',
    '~(turning|spinning|on|going|up and (running|going))',
    '~(pulling|moving|pushing|blowing) [(good|plenty of|lots of)] air',
    '~(running|spinning) (fine|good|ok)',
  ],
  tripped: ['tripped', '~(tripping|kicked out|cut out|tripped out|popped|cutting out)'],
  open: [
    'open',
    '~(left open|stuck open|hung open|wide open|opened|open circuit|open circuited)',
    '~not (closed|closing|shut|shutting|latching|made|making|pulled in|pulling in|energized|sucked in)',
    '~(dropped out|kicked open|propped [open]|cracked open|[wide] open (cold|hot|warm))',
  ],
  closed: [
    'closed',
    '~(stuck (closed|on|in|made|energized)|shut|calling [for (cool|cooling|cold)]|stuck shut|closing|made|welded [shut]|welded closed|pulled in|sucked in|pulling in|energized|engaged|not open|not opening)',
  ],
  leaking: [
    'leaking',
    '~((leaking|weeping|seeping) [(a little|some)] (oil|gas|refrigerant|water)|leaky|dripping|weeping [by]|seeping [by]|a leaker)',
  ],
  hot: [
    'hot',
    '~(overheated|overheating|running hot|too hot|very hot|cooking|too hot to touch|burning up|hot to the touch)',
  ],
  noisy: [
    'noisy',
    '~(loud|rattling|squealing|squeaking|grinding|vibrating|making noise|humming|knocking|screeching|squalling|screaming|howling|growling|whining|chattering|buzzing|clicking)',
  ],
  loose: [
    'loose',
    '~(hanging|hanging off|hanging loose|coming off|falling off|wobbly|wobbling|disconnected from the pipe|not (strapped|attached|tight|secured|clamped|insulated|making (good|any) contact) [(down|on)]|floppy|flopping [around]|backed out|sagging|sagged|drooping)',
  ],
  burnt: [
    'burnt',
    '~((burned|burnt) [(clean|right)] through|(burned|burnt) to a crisp|burned|burned up|burnt up|burnt out|burned out|smoked|crispy|charred [up]|melted|pitted|scorched|fried|cooked|toasted|blackened|discolored|overheated and melted|black)',
  ],
  missing: ['missing', '~(gone|not there|not installed)'],
  failed: [
    'failed',
    'bad',
    '~((running|turning|spinning|wired|blowing) backwards|broken|broke|shot|stripped|torn|tore|cracked|worn|worn out|ripped|faulty|defective|weak|split|bent|gone bad|blown|seized [up]|locked up|dragging|binding|swollen|swelled [up]|bulging|puffed up|chewed up|torn up|tore up|rotted [out]|brittle|open wound|ruptured|cooked off|kaput|no longer any good|not any good|shorted|bulged|toast|junk|damaged|no good|stuck|sticking|jammed|finished|done for|reading (wrong|off)|out of (calibration|cal|adjustment)|not (reading right|accurate|sealing|closing right|good|holding)|rusted [(out|through)]|corroded|rusty|in bad shape|falling apart|coming apart|leaking by|frayed|chafed|(barely|hardly) (turning|running|moving|spinning)|rubbed through|noisy and worn|kicked|wiped out|going (bad|out)|gone out|on (the|it is) way out|acting up|trashed|ruined|busted [up]|[all] (beat|banged|eaten|messed) up|eaten through|crushed|dented|warped|sprung|dried out|crumbling)',
  ],
  grounded: [
    '~([dead] (shorted|short) to ground|grounded [out]|going to ground|gone to ground|grounding out|to ground)',
    '~~dead to ground [on (all three|all of them|every (one|winding|leg)|both)]',
  ],
  ok: [
    'good',
    'clean',
    '~(ok|fine|clear|all right|alright|in good shape|in (good|great) condition|looking good|looks good|working [(fine|good|ok)]|brand new|(draining|running|flowing) (clear|free|freely)|quiet|tight|quieter|smooth|not (dirty|plugged|clogged|blocked|restricted|iced [(up|over)]|frozen [up]|frosted [(up|over)]|tripped|blown|bad))',
  ],
  wet: [
    'wet',
    '~(full of water|overflowing|soaked|soaking [wet]|damp|backed up|overflowing|sweating)',
  ],
  oily: ['oily', '~(covered in oil|full of oil|oil soaked|oil stained)'],
  warm: ['~(warm|warmer|luke warm|lukewarm)'],
  cold: ['~(cold|cool|colder|cooler|ice cold|stone cold|dead cold|cold to the touch)'],
  shortCycling: [
    '~short cycling',
    '~short cycling on (high|low) [pressure]',
    '~((cycling|kicking) on and off|on and off)',
    '~[(trying to start|starting) (and|then)] (cycling|cutting out|cutting off|shutting off|shutting down|kicking off|kicking out|tripping|tripping out|going out|dropping out) [off] on [(the|it is)] [internal] (overload|thermal|klixon|high (pressure|head)|low (pressure|side|suction)|head pressure)',
  ],
  hunting: ['~(hunting|hunting back and forth|surging)'],
  humming: [
    '~(humming|buzzing) [(but|and)] not (starting|turning|running|spinning|pumping)',
    '~(humming|buzzing) (but|and) [(it|she|they)] will not (start|turn|run|spin|take off)',
    '~[just] sitting there (humming|buzzing)',
    '~~(humming|buzzing) (and|then|and then|but) [it] (clicks|trips|kicks|cuts|shuts|goes|drops) (off|out)',
    '~(humming|buzzing) [(and|then|and then|but)] (clicking|cutting|kicking|tripping|cycling|going|dropping) (off|out) [every [(about|like)] [(few|couple of)] (ten|twenty|thirty|forty|fifty|sixty|fifteen|few|couple) (seconds|second|minutes|minute) [or so]]',
  ],
  defrosting: ['~in [a] defrost'],
  defrosted: ['~out of defrost', '~(done|finished|through) defrosting'],
  stuckInDefrost: ['~(stuck|hung [up]|locked) in [a] defrost'],
};

/** Said of what should be alive: a motor then stands still, and anything else has failed. */
export const LIFELESS = '(dead|out|down)';

/** What a part is said to do, without "is". */
export const DOING_NAMES: Partial<Record<FindingStateId, readonly string[]>> = {
  running: [
    '(kicked|came|fired|comes|kicks) [back] on [by itself]',
    'came (back|right back) on',
    '(started|fired|starts|fires) [right] up',
    '(runs|started|starts) [(fine|good|ok|now|again)]',
  ],
  leaking: [
    'leaks [(oil|gas|water)]',
    '(has|has got) a [(small|bad|big|little|slow)] leak',
    'has leaks',
    'drips',
  ],
  noisy: [
    'rattles [when i shake it]',
    '(has|has got|is got|got) [(a little|some|a bit of|a lot of|a touch of|a)] [(bearing|bushing|shaft)] (noise|play|squeal|rattle|wobble|chatter|growl)',
    'squeals',
    '(sounds|is sounding) (rough|bad|terrible|awful|loud|funny|like garbage|like junk|like it is (knocking|coming apart|grinding))',
    'makes noise',
    'hums',
    '(is making|makes|making|was making) (a|an|some|a lot of|all kinds of|a hell of a) [(weird|funny|loud|bad|awful|strange|grinding|humming|squealing|rattling)] (noise|noises|racket|sound|sounds)',
    '(howls|screams|whines|growls|clatters|clanks|is howling|is screaming|is whining|is growling)',
  ],
  notRunning: [
    'will not (run|start|turn [(on|over)]|spin|come on|kick on|fire [up])',
    '(never|did not|would not|could not) (came|come|comes|start|starts|started|run|ran|turn|spin|kick) [on]',
    '(shut|went|kicked) (off|down)',
    'is not trying to start',
    'is not doing anything',
    'does not (run|start|turn|spin|come on|work)',
    'quit',
    'stopped',
    'died',
    'has stopped',
  ],
  failed: [
    '(has|have) failed',
    'reads (wrong|off)',
    'will not (seal|close all the way|latch|hold)',
    'went (bad|out)',
    'failed',
    'blew',
    'does not close',
    'does not seal',
    'is not sealing',
    '(has|has got|is got|got) a [(big|small|little|nasty|bad)] (crack|tear|hole|split|rip|cut) [in it]',
    '(tests|tested|checks|checked|ohms|ohmed [out]) (bad|shorted|weak|failed)',
  ],
  tripped: [
    '(has|have) tripped',
    'keeps tripping',
    'trips',
    'kicked out',
    'tripped',
    'keeps kicking out',
  ],
  grounded: ['(went|goes) to ground', '(shorted|shorts|grounded) [out] to ground'],
  burnt: ['burned out'],
  hot: ['runs hot', 'feels hot'],
  loose: [
    '(is|has) (come|fallen|popped) (off|loose)',
    'is hanging off',
    'came loose',
    'fell off',
    'came off',
    'hangs loose',
  ],
  oily: ['has oil on it', 'has oil around it', 'has oil'],
  iced: ['(has|has got|is got|got) (ice|frost) [on it]', 'froze up'],
  wet: ['has water in it', 'overflows', 'is overflowing'],
  ok: [
    'looks (good|fine|ok|clean)',
    '(checks|tests|reads|ohms|check|test|read|ohm) [out] (good|ok|fine)',
    '(checks|tests|reads|ohms) out',
    '(checked|tested|ohmed [out]|metered|measured|read) (good|ok|fine|out)',
    'works [fine]',
    '(seals|closes) [up] (good|nice|fine|tight|all the way)',
  ],
  dirty: [
    'looks dirty',
    '(has not|has never|have not|have never) been (cleaned|washed|brushed) [in (years|months|forever|a while|ages|a long time)]',
    'needs cleaning badly',
    '(has|has got|is got|got|is wearing) (a|an|it is own) [(wool|full|whole|nice|thick)] (sweater|fur coat|coat|blanket|carpet|rug|mat|beard|overcoat) [on [it]]',
  ],
  shortCycling: [
    'short cycles',
    'keeps short cycling',
    'keeps (cycling|cutting out|cutting off|shutting off|kicking off) [off] on [(the|it is)] [internal] (overload|high (pressure|head)|low (pressure|side|suction)|head pressure)',
    'keeps (cutting|cycling|kicking) (on and off|in and out)',
  ],
  humming: [],
  hunting: ['hunts', 'keeps hunting', 'will not settle [down]'],
  open: [
    '(reads|tests|ohms [out]|tested|checked|read|ohmed [out]|measured|metered|checks|measures) [as] [wide] open',
    'will not close',
    '(never|did not) (close|closed|make|made|pull in|pulled in)',
    'does not make',
    'will not pull in',
    'does not pull in',
    'is not pulling in',
  ],
  closed: [
    '(reads|tests|ohms|tested|checked|read|ohmed [out]|measured|metered|checks) closed',
    'will not open',
    '~~(never|did not|does not|will not) (drop|dropped|drops) out',
    '(never|did not|does not) (open|opened|opens)',
  ],
};
