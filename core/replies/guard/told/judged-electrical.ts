import type { JudgedFindings } from '../../../advice/judged/judged-verdict.ts';
import type { Ways } from './told.ts';

type Of<J extends keyof JudgedFindings> = Record<JudgedFindings[J], Ways>;

const CAN = '[the|this|your] [run capacitor|capacitor|can]|[a|] run capacitor';
const CAPACITANCE = '[reads|measures|shows|comes to|is at|at|] {value}';
const RATED =
  '[rated|rated at|rated for|on a can rated|the can is rated|the can says|the rating is|against a rating of|with a rating of|should be] {limit}|on a {limit} [can|capacitor]|{limit} [on the can|by the can|rated]';

export const RUN_CAPACITOR: Of<'runCapacitor'> = {
  low: {
    must: [
      CAPACITANCE,
      '[gone|too|a|] weak [can|capacitor|one|]|[has|] gone weak|[too|reads] low',
      '[replace|change] [it|the can|the capacitor]|[swap|change] [it|the can|the capacitor] out|put [in a new one|a new one in]|fit a new one|[has|needs] to be replaced|wants replacing',
    ],
    may: [CAN, RATED],
  },
  within: {
    must: [
      CAPACITANCE,
      '[still|a|] good [one|can|capacitor|]|[all right|fine]|within its rating|as it should be|checks out',
    ],
    may: [CAN, RATED],
  },
  high: {
    must: [
      CAPACITANCE,
      '[too|reads|] high|over its rating',
      '[check|go over] the can and [the reading|your reading] [, then|, and then] [replace|change|swap] it|[check|look at] the can [, measure| and measure|, read| and read] it again [, then|and then|, and then] [replace|change|swap] it',
    ],
    may: [CAN, RATED],
  },
};

const START_CAN = '[the|this|your] [start capacitor|start cap|capacitor|can]|[a|] start capacitor';

export const START_CAPACITOR: Of<'startCapacitor'> = {
  low: {
    must: RUN_CAPACITOR.low.must,
    may: [
      START_CAN,
      '[marked|printed|rated] from {limit} [up|]|[the marking|the can] starts at {limit}|under the {limit} [on the can|it is marked from]',
    ],
  },
  within: {
    must: RUN_CAPACITOR.within.must,
    may: [START_CAN, '[marked|printed|rated|inside|within] {limit} to {read}'],
  },
  high: {
    must: RUN_CAPACITOR.high.must,
    may: [
      START_CAN,
      '[marked|printed|rated] up to {limit}|[the marking|the can] ends at {limit}|over the {limit} [on the can|it is marked up to]',
    ],
  },
};

const CONDEMN =
  "let it cool [and|, then|, and] [read|measure|check] [it|] [once more|again|one more time] before [you condemn it|it is condemned|you call it dead|condemning it]|[do not|don't] condemn it [until|before] [it has cooled and been read once more|you have let it cool and read it once more]";

export const WINDINGS: Of<'windings'> = {
  addsUp: {
    must: [
      '[the windings|the winding ohms|run and start|all three readings|they|all] [add|adds] up',
      '[still|now|you still|next|] [read|check|measure|take|test] each [one|winding|of them|terminal|] to ground [still|next|as well|too|]|each [one|winding|] [still|] has to be read to ground [still|]|[the reading|readings|reading each|each] to ground [still to do|is still to do|are still to do|comes next|still to come]',
    ],
  },
  doesNotAddUp: {
    must: [
      '[the windings are|they are|it is|] [off|out] by {value}|[the windings are|they are|] {value} [out|off|apart]',
      "[run and start|run plus start|run and start together] [do not|don't|does not] [add up to|come to|make] [run to start|the run to start reading|the reading run to start]",
      'zero the leads [and|, and|, then|and then] [read|measure] [them|all three|] again|[with|] the leads zeroed , read [them|] again',
    ],
  },
  overloadOpen: {
    must: [
      'run to start reads [, and|, but|, while|,|and|but|while] common [reads|is] open|common [reads|is] open [, and|, but|, while|,|and|but|while] run to start reads|[nothing|open] from common [, but|but|, while] run to start reads',
      "[that is|it is|that's|it's|] the internal overload [, not|and not|, and not] a winding|the internal overload is [what is|] open [, not|and not|, and not] a winding",
      'let it cool [down|]|give it time to cool [down|]|it has to cool',
    ],
  },
  startOpen: {
    must: ['the start winding [is|reads] open|[an|] open start winding', CONDEMN],
  },
  runOpen: {
    must: ['the run winding [is|reads] open|[an|] open run winding', CONDEMN],
  },
  open: {
    must: [
      '[everything|all of it|every reading|each reading|every pair|all three] [reads|read|is|] open',
      '[check|go over|look at|look over] [the|] terminals and [the|your|] leads',
      'let it cool [down|]',
      '[read|measure|take] [it|them|] again|read [it|] once more',
    ],
  },
  contradiction: {
    must: [
      "[those|these|the] [three|] [readings|ohms|] [cannot|can't] all be right|[they|all three] [cannot|can't] all be right|one of [those|the|these] three [readings|] [is|has to be] wrong",
      '[read|measure|take] [them|all three|] [all|] again|[read|measure|take] [them|all three] once more',
    ],
  },
};

const TO_GROUND = '[reads|read|at|] {value} to ground|to ground [it|] [reads|is|:|] {value}';

export const INSULATION: Of<'insulation'> = {
  aboveFloor: {
    must: [
      TO_GROUND,
      '[it|that] passes|passes|a pass',
      'one reading [is|makes|alone is|on its own is] no trend|one reading does not make a trend|no trend from one reading|a trend takes more than one reading',
    ],
    may: [
      '{limit} is the floor|the floor is {limit}|[against|over|above] [a|the] floor of {limit}|with the floor at {limit}|over the {limit} floor|above the {limit} floor',
    ],
  },
  belowFloor: {
    must: [
      TO_GROUND,
      '[it|that] fails|fails|a fail|failed',
      "[leave|keep] it off|it stays off|[do not|don't] [start|run|energise] it",
    ],
    may: [
      '{limit} is the floor|the floor is {limit}|[against|under|below] [a|the] floor of {limit}|with the floor at {limit}|under the {limit} floor|below the {limit} floor',
    ],
  },
};

const DRAWS =
  '[the compressor|] [draws|is drawing|pulls|is pulling|drawing|pulling|takes] {value}|{value} [on the compressor|]';
const RATED_LOAD =
  '[rated load|the rated load is|rated load is|rated for|the plate says|the plate gives|the nameplate says|by the plate|against a rated load of|on a rated load of] {limit}|{limit} [rated load|on the plate|by the plate]';

export const COMPRESSOR_CURRENT: Of<'compressorCurrent'> = {
  underRating: {
    must: [
      DRAWS,
      '[under|below|less than] [the|its] [plate|nameplate|rated load]',
      "what it should draw [is on|comes from|stands on] the maker's curve|[look up|get|read|take] what it should draw [from|on|off] the maker's curve|the maker's curve [says|tells|has|shows] what it should draw|[for|go for] what it should draw [,|] [go by|see] the maker's curve|go by the maker's curve for what it should draw",
    ],
    may: [RATED_LOAD],
  },
  overRating: {
    must: [
      DRAWS,
      '[over|above|more than] [the|its] [plate|nameplate|rated load]',
      '[look at|check|go over] head , [the|] voltage [and|, and|,] the run capacitor',
    ],
    may: [RATED_LOAD],
  },
  lockedRotor: {
    must: [
      DRAWS,
      '[that is|] locked rotor [amps|current|]|the rotor is locked',
      '[look at|check|watch] the start gear and the voltage [as|while|when] it tries [to start|]',
    ],
    may: [RATED_LOAD],
  },
};

const SUPPLY =
  '[the supply|supply|the voltage|line voltage|] [reads|is|is at|at|] {value}|{value} [on the supply|at the line|supply|]';

export const SUPPLY_VOLTAGE: Of<'supplyVoltage'> = {
  low: {
    must: [
      SUPPLY,
      '[too|reads|] low [on the supply|]',
      '[read|measure|take|check] it [again|] [as|while|when] it starts|[read|watch] the voltage [as|while|when] it starts',
    ],
    may: [
      'at least {limit} by the plate|[the|] plate [wants|asks for|needs|calls for] [at least|no less than] {limit}|under the {limit} [the plate asks for|that the plate asks for|by the plate|of the plate]|{limit} [is the least|at least] by the plate',
    ],
  },
  within: {
    must: [
      SUPPLY,
      '[within|inside] the [plate|nameplate]|[good|all right|right|fine] by the [plate|nameplate]|where the [plate|nameplate] wants it|as the [plate|nameplate] asks',
    ],
  },
  high: {
    must: [SUPPLY, '[too|reads|] high [on the supply|]'],
    may: [
      'at most {limit} by the plate|[the|] plate [allows|takes|stands] [at most|no more than] {limit}|over the {limit} [the plate allows|that the plate allows|by the plate|of the plate]|{limit} [is the most|at most] by the plate',
    ],
  },
};

const MOST =
  '{limit} is the most|the most is {limit}|the limit is {limit}|[with|] the most at {limit}|no more than {limit} [is allowed|]|[with|against] a limit of {limit}';
const UNDER = 'up to {limit} [is all right|]|[under|inside|within] the {limit} limit';
const OVER =
  '[over|past|above|more than] [the|] {limit} [limit|]|[over|past|above] the limit of {limit}';
const LEGS =
  '[voltage|] imbalance [is|of|at|reads|:|] {value}|{value} [of|] [voltage|] imbalance|[the|] legs are {value} out of balance';

export const VOLTAGE_IMBALANCE: Of<'voltageImbalance'> = {
  within: { must: [LEGS, 'all right|fine|good'], may: [`${MOST}|${UNDER}`] },
  aboveLimit: {
    must: [
      LEGS,
      '[find|look for|hunt for|go find|track down] [the|which] [bad leg|leg is bad]|[a leg is bad|one leg is bad] [:|,] find [it|which]',
    ],
    may: [`${MOST}|${OVER}`],
  },
  stop: {
    must: [LEGS, '[shut|turn] it [down|off] [now|at once|]|stop it [now|at once|]'],
    may: [OVER],
  },
};

const AMPS =
  'current imbalance [is|of|at|reads|:|] {value}|{value} [of|] current imbalance|the currents are {value} out of balance';

export const CURRENT_IMBALANCE: Of<'currentImbalance'> = {
  within: { must: [AMPS, 'all right|fine|good'], may: [`${MOST}|${UNDER}`] },
  aboveLimit: {
    must: [
      AMPS,
      '[move|roll|shift] all three leads [on|over|along] by one line|[move|roll|shift] all three leads one line [on|over|along]',
      "if [it|the imbalance] stays with the line [, |] [it is|it's|blame] the supply [, else|, if not|, otherwise|, or else] [it is|it's|] the motor|[stays|staying] with the line is the supply [, |] [moves|moving] with the lead is the motor",
    ],
    may: [`${MOST}|${OVER}`],
  },
};
