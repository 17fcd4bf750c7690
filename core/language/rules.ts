import { AIR_AND_LINE_RULES } from './readings/air-and-lines.ts';
import { ADVISED_RULES } from './recommendations/advised.ts';
import { ADVISED_SO_RULES } from './recommendations/advised-so.ts';
import { AIR_OF_PLACE_RULES } from './readings/air-of-places.ts';
import { ALOUD_RULES } from './talk/thinking-aloud.ts';
import { UNDERWAY_RULES } from './talk/underway.ts';
import { ANSWER_RULES } from './readings/answers-in-passing.ts';
import { ASIDE_RULES } from './talk/asides.ts';
import { BACK_AT_COMPRESSOR_RULES } from './readings/back-at-compressor.ts';
import { BEFORE_AND_AFTER_RULES } from './readings/before-and-after.ts';
import { CAME_TO_RULES } from './facts/came-to.ts';
import { CAPACITOR_RULES } from './electrical/capacitors.ts';
import { CAUSE_RULES } from './facts/cause-facts.ts';
import { CHANGED_RULES } from './readings/changed-by.ts';
import { CIRCUIT_TRACE_RULES } from './electrical/circuit-trace.ts';
import { PLAIN_SWITCH_RULES } from './electrical/plain-switch.ts';
import { CLAMP_RULES } from './electrical/clamped-and-ohmed.ts';
import { ALARM_RULES } from './facts/alarms-set.ts';
import { CLOCK_RULES, PIN_RULES } from './facts/clock-told.ts';
import { COMMAND_RULES } from './commands/command-rules.ts';
import { BESIDE_RULES } from './electrical/drawn-beside.ts';
import { CONDENSING_SIDE_RULES } from './readings/condensing-side.ts';
import { CONDENSING_UNIT_PLACE_RULES, UNIT_BY_PLACE_RULES } from './facts/condensing-unit-place.ts';
import { CONTROL_ACTING_RULES } from './facts/controls-acting.ts';
import { CONTROL_RULES } from './facts/controls.ts';
import { ELECTRICAL_RULES } from './electrical/electrical.ts';
import { FACT_RULES } from './facts/facts.ts';
import { FINDING_RULES } from './findings/findings.ts';
import { LEG_FOUND_RULES } from './findings/legs-found.ts';
import { LEFT_OPEN_RULES } from './work-done/left-open.ts';
import { LOOSE_RULES } from './readings/loosely-said.ts';
import { MEMO_RULES } from './talk/memos.ts';
import { METERED_RULES } from './electrical/metered-so.ts';
import { ONE_OF_SEVERAL_RULES } from './findings/one-of-several.ts';
import { FAILED_SO_RULES, PART_OF_PART_RULES } from './findings/part-of-part.ts';
import { PLACE_NAME_RULES, SITE_NAME_RULES } from './facts/named-places.ts';
import { NAMED_PART_RULES } from './facts/named-parts.ts';
import { NAME_RULES } from './facts/name-facts.ts';
import { PEOPLE_RULES } from './talk/people-remarks.ts';
import { POWER_FINDING_RULES } from './findings/power-findings.ts';
import { PLATE_ORDER_RULES, PLATE_RULES } from './facts/plate-facts.ts';
import { OUGHT_RULES } from './recommendations/ought.ts';
import { PLATE_READ_OUT_RULES } from './facts/plate-read-out.ts';
import { QUESTION_RULES } from './questions/question-rules.ts';
import { OFF_THE_SCALE_RULES } from './work-done/off-the-scale.ts';
import { RATING_RULES } from './electrical/ratings.ts';
import { NUMBERED_RULES } from './readings/numbered.ts';
import { ONE_BY_ONE_RULES } from './readings/one-by-one.ts';
import { BIT_RULES } from './findings/bits-of-parts.ts';
import { NO_LONGER_RULES } from './findings/no-longer.ts';
import { BEFORE_RULES } from './readings/told-of-before.ts';
import { ROWLESS_RULES } from './readings/rowless.ts';
import { DICTATED_RULES, FIGURE_FIRST_RULES, VALUE_FIRST_RULES } from './readings/value-first.ts';
import { NAMED_TOGETHER_RULES } from './readings/named-together.ts';
import { NEAR_NUMBER_RULES } from './readings/near-numbers.ts';
import { ONLY_THAT_RULES } from './findings/only-that.ts';
import { FOUND_WHERE_RULES, PLAINLY_SAID_RULES } from './findings/plainly-said.ts';
import { PROBED_RULES } from './readings/probed.ts';
import { RUN_RULES } from './findings/run-again.ts';
import { SATURATED_SIDE_RULES } from './readings/saturated-sides.ts';
import { READING_RULES } from './readings/readings.ts';
import { RECOMMENDATION_RULES } from './recommendations/recommendations.ts';
import { REMARK_RULES } from './talk/remarks.ts';
import { ADVISED_ALOUD_RULES } from './recommendations/advised-aloud.ts';
import { ADVISED_OF_IT_RULES } from './recommendations/advised-of-it.ts';
import { FOUND_SO_RULES } from './findings/found-so.ts';
import { TOLD_BESIDE_RULES } from './findings/told-beside.ts';
import { BESIDE_PLATE_RULES } from './electrical/beside-the-plate.ts';
import { SAFETY_ACT_RULES } from './findings/safeties-acting.ts';
import { SAFETY_RULES } from './findings/safeties-told.ts';
import { SITE_RULES } from './facts/site-and-unit.ts';
import { WORK_TOLD_RULES } from './work-done/told-of-work.ts';
import { PASSING_RULES } from './work-done/told-in-passing.ts';
import { POWERED_AGAIN_RULES } from './work-done/powered-again.ts';
import { BIT_NAMED_RULES } from './findings/bits-named.ts';
import { HOW_FULL_RULES, NOT_AT_HAND_RULES } from './findings/how-full.ts';
import { INSTEAD_RULES } from './readings/instead-of.ts';
import { BOX_BY_PLACE_RULES } from './readings/boxes-by-place.ts';
import { METER_VERB_RULES } from './electrical/meter-verbs.ts';
import { METERED_THERE_RULES } from './electrical/metered-there.ts';
import { METER_TALK_RULES } from './electrical/meter-talk.ts';
import { FEED_RULES } from './findings/frost-and-feed.ts';
import { START_RULES } from './readings/from-the-start.ts';
import { FOOD_PLACE_RULES } from './readings/food-places.ts';
import { FOOD_RULES } from './readings/food-told.ts';
import { GAS_RULES, GAS_TALK_RULES } from './facts/gas-told.ts';
import { GAUGES_AGAIN_RULES } from './readings/gauges-again.ts';
import { SAID_AGAIN_RULES } from './readings/said-again.ts';
import { NOW_AT_RULES } from './readings/now-at.ts';
import { GAUGE_TALK_RULES } from './readings/gauge-talk.ts';
import type { Rule } from './rule.ts';
import { METER_FIGURE_RULES } from './electrical/meter-figures.ts';
import { NOT_MEASURED_RULES } from './readings/not-measured.ts';
import { NO_SUPPLY_RULES, SUPPLY_POINT_RULES } from './electrical/supply-points.ts';
import { SUPPLY_VOLTAGE_RULES } from './electrical/supply-voltages.ts';
import { DRAWN_OVER_TIME_RULES } from './electrical/drawn-over-time.ts';
import { CUSTOMERS_ANSWER_RULES } from './talk/customers-answer.ts';
import { DESIGNATED_RULES } from './work-done/designated.ts';
import { DRIER_RULES } from './readings/through-drier.ts';
import { DROPPED_HUNDRED_RULES } from './readings/dropped-hundreds.ts';
import { ELSEWHERE_RULES } from './talk/elsewhere.ts';
import { ERRAND_RULES } from './talk/errands.ts';
import { EXPECTATION_RULES } from './readings/expectations.ts';
import { LEAK_AND_VALVE_RULES } from './findings/leaks-and-valves.ts';
import { RUBBED_RULES } from './findings/rubbed-through.ts';
import { LEG_RULES } from './electrical/supply-legs.ts';
import { SIDE_TEST_RULES } from './readings/sides-tested.ts';
import { SIDE_RULES } from './readings/sides-told.ts';
import { SPOKEN_OF_RULES } from './readings/spoken-of.ts';
import { STANDING_RULES } from './readings/standing-pressure.ts';
import { SIZED_PART_RULES } from './work-done/sized-parts.ts';
import { JOB_RULES } from './work-done/job-told.ts';
import { PUMPED_DOWN_RULES } from './readings/pumped-down.ts';
import { TEST_TOLD_RULES } from './readings/tests-told.ts';
import { TALK_RULES } from './talk/talk.ts';
import { DESCRIPTION_RULES } from './facts/unit-description.ts';
import { SEEN_AND_DONE_RULES } from './work-done/seen-and-done.ts';
import { SEEN_RULES, UNSEEN_RULES } from './findings/findings-seen.ts';
import { TOLD_ALSO_RULES } from './findings/told-also.ts';
import { BARE_HOURS_RULES, TIME_TOLD_RULES } from './facts/time-told.ts';
import { TURNED_ROUND_RULES } from './findings/turned-round.ts';
import { UNIT_TOLD_RULES } from './facts/units-told.ts';
import { UNNAMED_FAN_RULES } from './findings/unnamed-fan.ts';
import { THING_RULES } from './findings/things-seen.ts';
import { IT_SWINGS_RULES, SWINGING_RULES } from './readings/swinging.ts';
import { SOME_OF_THEM_RULES } from './findings/some-of-them.ts';
import { SIZED_UNIT_RULES } from './facts/units-by-size.ts';
import { WATCHED_GAUGE_RULES } from './readings/watched-gauge.ts';
import { WANTED_RULES } from './facts/wanted-temperatures.ts';
import { SCALE_WATCHED_RULES } from './work-done/scale-watched.ts';
import { SCALE_RULES, WEIGHED_SO_RULES } from './work-done/weighed-so.ts';
import { WINDING_RULES } from './electrical/windings.ts';
import { BY_THE_PLATE_RULES } from './work-done/by-the-plate.ts';
import { NEW_ONE_RULES } from './work-done/new-ones.ts';
import { TUBING_RULES } from './work-done/tubing.ts';
import { WORKED_SO_RULES } from './work-done/worked-so.ts';
import { WORK_RULES } from './work-done/work.ts';

/**
 * Everything that can be said. Where two rules claim the same words, the earlier one is meant. Beside a group stands why
 * it goes before a later one: words that both would read and mean otherwise by, of all that are found in tests/corpus.
 * On the place of a group without such words the corpus has next to nothing.
 */
export const RULES: readonly Rule[] = [
  // Before memos, which would keep the words: “write down head one ninety”.
  ...DICTATED_RULES,
  ...MEMO_RULES,
  // Before findings and commands: “is the cap bad” asks, and “done” asks for the next step where steps are told.
  ...QUESTION_RULES,
  // Before commands: “on to the prep table” opens a visit and names its unit.
  ...NAME_RULES,
  ...NAMED_PART_RULES,
  // Before controls: “high temp alarm was set at sixty” sets no box.
  ...ALARM_RULES,
  // Before talk, which would drop it: “they want it at thirty seven”.
  ...WANTED_RULES,
  // Before expectations: “box is forty four should be thirty six” is a reading as well.
  ...INSTEAD_RULES,
  // Before what no meter showed: “superheat should be ten” is asked about.
  ...EXPECTATION_RULES,
  // Before readings, which take the last number for a second one: “superheat's ten ten and a half”.
  ...DROPPED_HUNDRED_RULES,
  ...ONLY_THAT_RULES,
  // Before talk: “one of those four oh four a units”.
  ...GAS_RULES,
  ...GAS_TALK_RULES,
  ...TIME_TOLD_RULES,
  // Before the job and talk: “i got here at ten fifteen” is when, and so is “i'm out of here at one thirty”.
  ...PIN_RULES,
  ...CLOCK_RULES,
  ...NO_SUPPLY_RULES,
  // Before talk and what no meter showed: “no”, and “head's not two hundred”, take something back.
  ...COMMAND_RULES,
  ...SUPPLY_VOLTAGE_RULES,
  // Before facts and talk: “rla seven two”, “model number four twenty”.
  ...PLATE_RULES,
  ...PLATE_READ_OUT_RULES,
  ...CONDENSING_UNIT_PLACE_RULES,
  // Before readings: “walk in on twenty two” is on R-22.
  ...DESCRIPTION_RULES,
  // Before facts, which would take the unit alone: “ice machine at Blue Heron Hotel”.
  ...SITE_RULES,
  ...PLACE_NAME_RULES,
  // Before readings and controls: “head valve's set at ninety five” is no head pressure.
  ...CONDENSING_SIDE_RULES,
  ...STANDING_RULES,
  ...SIDE_TEST_RULES,
  // Before readings: “discharge eighty two” is a line's temperature in °C.
  ...AIR_AND_LINE_RULES,
  ...BACK_AT_COMPRESSOR_RULES,
  ...AIR_OF_PLACE_RULES,
  ...SATURATED_SIDE_RULES,
  ...PLAINLY_SAID_RULES,
  ...PROBED_RULES,
  ...DRIER_RULES,
  // Before supply points and readings: “zero volts out of the transformer”, “twenty four at the low pressure”.
  ...CIRCUIT_TRACE_RULES,
  ...PLAIN_SWITCH_RULES,
  ...BESIDE_PLATE_RULES,
  ...BESIDE_RULES,
  // Before readings: “low pressure control trips at six” is a setting.
  // Before controls, which would take the first alone: “set the low pressure back to twenty out and forty in”.
  ...CONTROL_ACTING_RULES,
  ...CONTROL_RULES,
  // Before what starts somewhere: “head's one forty, one forty seven” is one value put nearer.
  ...NEAR_NUMBER_RULES,
  ...VALUE_FIRST_RULES,
  // Before readings: “walk-in's about half empty” is no half degree.
  ...HOW_FULL_RULES,
  ...START_RULES,
  // Before what is said loosely and tests: “box dropped ten” is no box at ten degrees.
  ...CHANGED_RULES,
  ...BEFORE_AND_AFTER_RULES,
  ...BEFORE_RULES,
  ...ROWLESS_RULES,
  ...NAMED_TOGETHER_RULES,
  // Before meters: “compressor two nineteen amps” may be the second one's, and is asked about.
  ...ONE_BY_ONE_RULES,
  ...NUMBERED_RULES,
  ...OFF_THE_SCALE_RULES,
  // Before readings: “scale reads negative two pounds” is weighed.
  ...SCALE_RULES,
  ...SCALE_WATCHED_RULES,
  // Before gauges, what is said loosely and answers: “ten minutes in, nine hundred microns”.
  ...READING_RULES,
  ...BOX_BY_PLACE_RULES,
  ...FOOD_RULES,
  ...FOOD_PLACE_RULES,
  ...PUMPED_DOWN_RULES,
  // Before what is said loosely and gauges: “it's at six fifty now” is of the vacuum that is watched.
  ...WATCHED_GAUGE_RULES,
  ...GAUGES_AGAIN_RULES,
  ...SAID_AGAIN_RULES,
  ...NOW_AT_RULES,
  ...TEST_TOLD_RULES,
  // Before what is said loosely: “tank was at forty pounds and it's down to thirty seven and a half”.
  ...WEIGHED_SO_RULES,
  ...BY_THE_PLATE_RULES,
  ...FIGURE_FIRST_RULES,
  // Before gauges: “two twenty five and climbing” answers what was asked.
  ...ANSWER_RULES,
  // Before clamps and work: “sensor reads ten k at seventy seven”, “pulled the disconnect”.
  ...FEED_RULES,
  ...SIDE_RULES,
  ...GAUGE_TALK_RULES,
  ...SWINGING_RULES,
  ...LOOSE_RULES,
  ...IT_SWINGS_RULES,
  // Before work and findings: “put in a new drier”, “outlet's loose” of a plug.
  ...WORK_TOLD_RULES,
  // Before capacitors: “run cap should be thirty five, reading twenty eight” is rated and read.
  ...RATING_RULES,
  // Before meters: “cap's rated ten and reading eight point two”.
  ...CAPACITOR_RULES,
  // Before electrical readings, which take two figures for one number: “amps eight two” is asked about.
  ...METER_FIGURE_RULES,
  ...LEG_RULES,
  ...WINDING_RULES,
  // Before electrical readings: “every winding to ground is over limit”.
  ...METER_TALK_RULES,
  // Before supply points and what was done: “118V at the contactor”, “start cap measured one oh eight”.
  ...ELECTRICAL_RULES,
  ...METER_VERB_RULES,
  // Before supply points: “contactor's getting two thirty”.
  ...METERED_THERE_RULES,
  // Before clamps: “transformer secondary reads zero”.
  ...SUPPLY_POINT_RULES,
  ...CLAMP_RULES,
  // Before findings: “winding's shorted to ground”.
  ...METERED_RULES,
  ...DRAWN_OVER_TIME_RULES,
  ...UNNAMED_FAN_RULES,
  ...CAUSE_RULES,
  ...UNIT_BY_PLACE_RULES,
  ...UNIT_TOLD_RULES,
  // Before findings: “glass is clear”, “bubbles in the glass”.
  ...SIZED_UNIT_RULES,
  ...FACT_RULES,
  ...PLATE_ORDER_RULES,
  ...SITE_NAME_RULES,
  // Before recommendations and work: “this is the return trip to replace the compressor”.
  ...CAME_TO_RULES,
  // Before findings, remarks and what people do: “condenser needs cleaning”, “told them to replace the gasket”.
  ...RECOMMENDATION_RULES,
  ...ADVISED_RULES,
  // Before talk: “when you get time replace the door switch”.
  ...ADVISED_SO_RULES,
  ...ADVISED_ALOUD_RULES,
  ...ADVISED_OF_IT_RULES,
  ...OUGHT_RULES,
  // Before power that came back, and work: “plugged it back in”, “unplugged it”.
  ...LEFT_OPEN_RULES,
  ...POWERED_AGAIN_RULES,
  ...RUN_RULES,
  // Before findings: “pulled the compressor” is no compressor that pulls.
  ...NEW_ONE_RULES,
  ...TUBING_RULES,
  ...WORK_RULES,
  ...WORKED_SO_RULES,
  ...SIZED_PART_RULES,
  ...DESIGNATED_RULES,
  // Before findings: “coil's open” is the contactor's where that was named; “compressor trips on overload”.
  ...SAFETY_RULES,
  ...SAFETY_ACT_RULES,
  ...SEEN_AND_DONE_RULES,
  ...BIT_NAMED_RULES,
  ...ONE_OF_SEVERAL_RULES,
  // Before findings, which end at the part: “bearing's gone in the cond fan”.
  ...SOME_OF_THEM_RULES,
  ...LEG_FOUND_RULES,
  ...POWER_FINDING_RULES,
  // Before what is not seen: “sniffer hit on the evaporator”.
  ...SEEN_RULES,
  ...BIT_RULES,
  ...NO_LONGER_RULES,
  ...FAILED_SO_RULES,
  // Before a part of a part, the unseen and talk: “coil's not iced”, “klixon on the coil's open cold”.
  ...FINDING_RULES,
  ...PART_OF_PART_RULES,
  ...TURNED_ROUND_RULES,
  ...TOLD_ALSO_RULES,
  ...TOLD_BESIDE_RULES,
  ...FOUND_SO_RULES,
  // Before the unseen: “my sniffer lit up at the return bend”.
  ...RUBBED_RULES,
  ...LEAK_AND_VALVE_RULES,
  ...UNSEEN_RULES,
  // Before talk, which would take it for the complaint: “manager said go ahead”.
  ...CUSTOMERS_ANSWER_RULES,
  // What tells nothing of ours comes last. Remarks before talk: “i told the manager not to use the dairy” is kept.
  ...REMARK_RULES,
  ...NOT_AT_HAND_RULES,
  ...BARE_HOURS_RULES,
  // Before people: “staff's been resetting it every morning”.
  ...PASSING_RULES,
  ...JOB_RULES,
  ...ASIDE_RULES,
  ...ERRAND_RULES,
  // Before people: “customer complained it's too loud”.
  ...TALK_RULES,
  ...ELSEWHERE_RULES,
  ...NOT_MEASURED_RULES,
  ...THING_RULES,
  ...FOUND_WHERE_RULES,
  ...PEOPLE_RULES,
  ...SPOKEN_OF_RULES,
  ...UNDERWAY_RULES,
  ...ALOUD_RULES,
  // What is only named, where no other rule knows more.
];
