import type { Token } from '../../grammar/tokens.ts';
import { MONTHS, WEEKDAYS } from '../../terms/calendar.ts';

/** Days and months by name, but for "may", which is told of anything. */
const NAMED_DAYS = [...Object.keys(WEEKDAYS), ...Object.keys(MONTHS)]
  .filter((name) => name !== 'may')
  .join(' ');

/**
 * Words of daily life that no reading is told with. A clause that holds one and a number that no rule reads speaks of
 * something else: "they're open till nine".
 */
const EVERYDAY: ReadonlySet<string> = new Set(
  (
    'he him his they them their theirs who whose people guy guys man lady woman boss owner manager ' +
    'customer chef cook cooks waitress bartender tenant landlord janitor kid kids wife husband son daughter brother dad ' +
    'mom friend buddy apprentice helper driver inspector salesman dispatcher dispatch office shop warehouse store stores ' +
    'restaurant bar school church hospital hotel house home lunch breakfast dinner coffee beer pizza sandwich donut truck ' +
    'van car trailer traffic highway parking drive drove driving driven ride phone cell text texted email ' +
    'called calls calling appointment schedule tomorrow yesterday tonight morning afternoon evening noon midnight weekend ' +
    `${NAMED_DAYS} ` +
    'christmas holiday vacation birthday overtime dollars ' +
    'dollar bucks cents money cash price prices priced cost costs bill billed invoice quote quoted estimate paid pay owe ' +
    'owes tax discount warranty labor budget lease rent sold sell buy bought game score football baseball weather rain ' +
    'raining snow snowing miles mile ladder flashlight toolbox bag gloves boots shirt chair stool crate floor floors ' +
    'stairs elevator upstairs downstairs basement attic address suite apartment aisle till ago older newer born married ' +
    'hired fired retired wired models model serial brand movie movies theater album song songs concert contest girl girls boy boys smile player players team teams styles ' +
    'colors painting paintings novel poem singer singers toast tv'
  ).split(' '),
);

/** Units, names and parts that make a number ours whatever else is said. */
const OURS: ReadonlySet<string> = new Set(
  (
    'psi psig degree degrees fahrenheit celsius volt volts amp amps ohm ohms meg megs megohm megohms micron microns millibar mbar pascals ' +
    'inch inches ounce ounces oz pound pounds lb lbs gram grams kilo kilos bar kpa microfarad microfarads watt watts ' +
    'head suction superheat subcooling ambient discharge nitrogen vacuum box line side charge plate nameplate pump valve ' +
    'fan fans compressor condenser coil evaporator cap capacitor contactor switch control stat thermostat cylinder tank ' +
    'hose gage gages meter leg legs coming reading reads'
  ).split(' '),
);

/** Where somebody stands says little: "in the basement it's about sixty" was read there. */
const PLACES: ReadonlySet<string> = new Set(
  'house home store restaurant bar shop warehouse basement attic upstairs downstairs floor truck van'.split(
    ' ',
  ),
);

const JOINS: ReadonlySet<string> = new Set(['and', 'but', 'so', 'now', 'then', 'while', 'because']);
const SUBJECTS: ReadonlySet<string> = new Set(['i', 'it', 'we', 'now', 'still', 'got', 'reading']);

/** Whether what stands around a number speaks of something else than the job's readings. */
export function isEveryday(clause: readonly Token[], at: number): boolean {
  const own = ownClause(clause, at);
  if (own.some(({ text }) => OURS.has(text))) return false;
  const isRead = isSaidOfIt(clause, at);
  return own.some(({ text }) => EVERYDAY.has(text) && !(isRead && PLACES.has(text)));
}

/** "The truck's running and I've got two ten": what begins anew is of its own. */
function ownClause(clause: readonly Token[], at: number): readonly Token[] {
  const starts = clause.flatMap(({ text }, index) =>
    JOINS.has(text) && SUBJECTS.has(clause[index + 1]?.text ?? '') ? [index] : [],
  );
  const from = starts.findLast((start) => start < at) ?? 0;
  const to = starts.find((start) => start > at) ?? clause.length;
  return clause.slice(from, to);
}

const HEDGES: ReadonlySet<string> = new Set(['about', 'around', 'at', 'like', 'reading']);

/** "It's sixty", "it's about sixty" */
function isSaidOfIt(clause: readonly Token[], at: number): boolean {
  const before = HEDGES.has(clause[at - 1]?.text ?? '') ? at - 1 : at;
  return clause[before - 1]?.text === 'is' && clause[before - 2]?.text === 'it';
}
