import type { JudgedFindings } from '../../../advice/judged/judged-verdict.ts';
import type { Ways } from './told.ts';

type Of<J extends keyof JudgedFindings> = Record<JudgedFindings[J], Ways>;

const MOST =
  '{limit} is the most|the most is {limit}|the limit is {limit}|[with|] the most at {limit}';
const COIL = "the coil's own temperature";
const AIR =
  '[that is|it is|it may be|you have|either|] air [,|] or a [wrong or mixed|mixed or wrong] refrigerant [in it|in there|]';

export const NON_CONDENSABLES: Of<'nonCondensables'> = {
  none: {
    must: [
      `{value} [off|from|away from] ${COIL}|[within|only] {value} [of|off|from] ${COIL}|head sits {value} off ${COIL}`,
      'no air [in it|] [to speak of|worth speaking of|worth the name]',
    ],
    may: [`${MOST}|up to {limit} [is all right|]`],
  },
  suspected: {
    must: [
      `{value} [over|above] ${COIL}|[head|it] sits {value} [over|above] ${COIL}`,
      AIR,
      'let it settle [and|, then|, and] read [it|both|] again|[give it time to settle|let it settle] , then read [it|both|] once more',
    ],
  },
  present: {
    must: [
      `{value} [over|above] ${COIL}|[head|it] sits {value} [over|above] ${COIL}`,
      AIR,
      'recover [it|] , [evacuate|pull a vacuum] [and|, and|, then] weigh [it|the charge|] in|[get|take] it [all|] out , evacuate and weigh [it|the charge|] in',
    ],
  },
  testFailed: {
    must: [
      `{value} [under|below] ${COIL}`,
      '[the|that] test failed|the test did not work|[that is|] a failed test',
      '[either|] [there is|] no liquid [in|] there [, or|or] [it has|] not settled|[either|] [it has|] not settled [, or|or] [there is|] no liquid [in|] there',
      '[read|take] [them|] both [once more|again]|[read|take] both of them again',
    ],
  },
};

const FOOD =
  '{value} in the food|[the|] food [is|reads|is at|at|] {value}|[a|the] probe [in the food|] [reads|says] {value}';

export const FOOD_JUDGED: Of<'food'> = {
  within: {
    must: [
      FOOD,
      '[within|inside|under] [it|the usual limit|the usual {limit} limit|the usual limit of {limit}] [now|for now|right now|at the moment]',
    ],
    may: ['the usual limit is {limit}|{limit} is the usual limit'],
  },
  above: {
    must: [
      FOOD,
      '[over|above|past] [the usual limit|the usual {limit} limit|the usual limit of {limit}]',
    ],
    may: ['the usual limit is {limit}|{limit} is the usual limit'],
  },
  thawed: {
    must: [
      FOOD,
      '[it has|that has|has|it is|] thawed',
      'frozen food [has to|must] stay frozen|what is frozen [has to|must] stay frozen',
    ],
  },
};

const AT_THAT = 'at that temperature';
const HELD_AGAINST = `should [be|read|stand at] {limit} [${AT_THAT}|]|{limit} [is|would be] right ${AT_THAT}|${AT_THAT} [it|] should [be|read] {limit}`;
const STANDS = '[reads|stands at|is at|now|now at|now reads|at|] {read}';

export const PRESSURE_JUDGED: Of<'pressureTest'> = {
  holds: {
    must: ['[it|the test|the pressure|] [holds|is holding|holding]', STANDS],
    may: [HELD_AGAINST],
  },
  leaks: {
    must: ['[it|the test|] [lost|has lost] {value}|{value} [lost|gone|down]|down {value}'],
    may: [STANDS, HELD_AGAINST],
  },
  rises: {
    must: [
      '[it|the test|] [gained|has gained] {value}|{value} [gained|up]|up {value}',
      "the gas was not at the temperature [you|that you] read|the temperature you read was not [that of the gas|the gas temperature|the gas's]|the gas stood at another temperature than you read",
    ],
    may: [STANDS, 'should [be|read|stand at] {limit}'],
  },
};

const OPENED = '[it|the {about}|] [opened|tripped|let go|went] at {read}';
const SET =
  '[it is|] [set|set at|set for] {limit}|[its|the] setting is {limit}|with [its|the] setting at {limit}|[against|on] a setting of {limit}';

export const CONTROL: Of<'highPressureSwitch'> = {
  whereSet: {
    must: [
      `${OPENED}|{read} to open`,
      '[the {about}|it|] [trips|tripped|opens|opened] [right|] where it is set|[right|] where it is set|[right|] at its setting',
      'find [out|] why it got there|find [out|] what [took|drove|brought|put] it there|now find [out|] why it got there',
    ],
    may: [SET, 'the {about}'],
  },
  early: {
    must: [
      '{value} [early|too early|too soon]|[early|too early] by {value}|{value} short of its setting',
      '[either|] [the|it is the] {about} is at fault [, or|or] its setting is|[either|it is|] the {about} or its setting [is at fault|is to blame|is wrong|]|at fault is the {about} or its setting',
    ],
    may: [OPENED, SET],
  },
  late: {
    must: [
      '{value} [late|too late]|[late|too late] by {value}|{value} past its setting',
      '[the|that] {about} does not protect it|it is not protected by [the|that] {about}|[the|that] {about} is not protecting it',
    ],
    may: [OPENED, SET],
  },
};

const DISCHARGE =
  '{value} [discharge|on the discharge line|at the discharge line|at discharge]|[the|] discharge [line|] [is|reads|is at|at|runs|runs at|:|] {value}';

export const DISCHARGE_LINE: Of<'dischargeLine'> = {
  withinLimit: {
    must: [DISCHARGE, 'all right|fine|cool enough for the oil'],
    may: [`${MOST}|up to {limit} [is all right|]|[under|inside|within] the {limit} limit`],
  },
  aboveLimit: {
    must: [
      DISCHARGE,
      '[too hot|hotter than is good] for the oil|hotter than the oil [can take|takes]|more than the oil [can take|takes]',
      '[look at|check|go over] superheat and [the|] compression ratio',
    ],
    may: [`${MOST}|[over|above|past] the {limit} limit|[over|above|past] {limit}`],
  },
  floodBack: {
    must: [
      DISCHARGE,
      '[hardly|barely|scarcely|only just] [above|over] condensing',
      'liquid may be [coming|getting|running] back|[there|it] may be liquid coming back|it may be bringing liquid back',
    ],
  },
};

const A_YEAR =
  '[leaks|it leaks|loses|it loses|leaking|losing|] {value} a year|a leak rate of {value} a year';

export const LEAK_RATE: Of<'leakRate'> = {
  within: {
    must: [A_YEAR, '[within|inside|under] [it|the limit|the {limit} limit|the limit of {limit}]'],
    may: ['{limit} is the limit|the limit is {limit}'],
  },
  overThreshold: {
    must: [
      A_YEAR,
      '[over|above|past] [the|] [{limit} limit|limit of {limit}|limit]',
      '[it|the leak|] [has to|must] be [repaired|mended|fixed] and verified|[repair|mend|fix] [it|the leak] and verify [it|the repair] : [that is|it is] required',
    ],
    may: ['{limit} is the limit|the limit is {limit}'],
  },
  notCovered: {
    must: [
      A_YEAR,
      'the federal limit does not [cover|reach|apply to] so small a charge|so small a charge is not [covered by|under] the federal limit|[the|your] charge is too small for the federal limit',
      '[still fix|fix|repair|mend] [the|that] leak [all the same|anyway|even so|]|[the|that] leak [wants|needs] fixing [all the same|anyway|even so]',
    ],
  },
};

const HEATER_DRAWS = '[it|the {about}|] [draws|is drawing|pulls|takes|drawing] {value}|{value}';
const SHOULD_BE =
  '[it|] should [be|draw|pull|take] {limit}|[out of|of] the {limit} it should [be|draw]';

export const HEATER: Of<'defrostHeater'> = {
  expected: {
    must: [
      '[expect|it should draw|it should be|it should pull|the {about} should draw|should be|should draw|figure on] {value}|{value}',
      '[by|from|going by|worked from] [its|the] ohms and [the|its|] voltage',
      '[clamp|put a clamp on|put the clamp on] it and tell me [what it draws|]|clamp it and [say|tell me] what you read',
    ],
    may: ['[on|for] the {about}'],
  },
  byRating: {
    must: [
      '[about|it should read|expect|figure on] {value} [cold|with the leads off]',
      '{limit} [running|drawing|when it runs|on the clamp]',
      '[by|from|going by|worked from] [its|the] rating and [the|its|] voltage',
      'read it and [tell me|say] [what it reads|]|[tell me|say] what you read',
    ],
    may: ['[on|for] the {about}'],
  },
  asExpected: {
    must: [HEATER_DRAWS, '[the {about}|it|] is [good|all right|fine]|good|[a|] good {about}'],
    may: [SHOULD_BE],
  },
  off: {
    must: [
      HEATER_DRAWS,
      SHOULD_BE,
      '[look|hunt|search] for a dead element or a bad joint|find the dead element or [the|] bad joint|a dead element or a bad joint : [find it|look for it]',
    ],
    may: ['[on|for] the {about}'],
  },
  noCurrent: {
    must: [
      '[it|the {about}|] draws [nothing|no current|no amps]|[no|zero] [current|amps] [at all|] [on|in|through|at] [the {about}|it]|nothing drawn',
      '[prove|check for] voltage at the {about} [while|when] it [calls|is called for]|[while|when] it [calls|is called for] , [prove|check for] voltage at the {about}',
    ],
    may: [
      '[it|] should [be|draw|pull|take] {limit}|[out of|instead of] the {limit} it should draw',
    ],
  },
};
