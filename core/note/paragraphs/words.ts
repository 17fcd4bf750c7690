import type { FoundRow } from '../../advice/history-verdict.ts';
import type { Finding, Recommendation } from '../../language/utterance.ts';
import { SUSPECTS } from '../../replies/circuit-sentences.ts';
import { CAUSE_PHRASES } from '../../replies/cause-phrases.ts';
import { leftWords } from '../../replies/left-open-sentences.ts';
import { type Made, whenWords } from '../../replies/recommendation-sentences.ts';
import type { CauseId } from '../../terms/causes.ts';
import { PARTS, type PartId } from '../../terms/names.ts';
import { coilFault } from '../../terms/solenoid-coils.ts';
import type { LeftOpen } from '../../visit/left-open.ts';
import type { CircuitSuspects } from '../circuit.ts';
import { saysStuckClosed } from '../../terms/stuck-closed.ts';
import { EFFECTS, PLAIN_CAUSES } from '../customer-words/causes.ts';
import { PLAIN_LEFT } from '../customer-words/left.ts';
import { isMany, type Naming } from '../customer-words/parts.ts';
import { PLAIN_SUSPECTS } from '../customer-words/suspects.ts';
import { plainState } from '../customer-words/states.ts';
import { PLAIN_WORK, TRADE_WORK } from '../customer-words/work.ts';
import { tradeState } from '../told-state.ts';
import { listed } from '../wording.ts';
import type { CalledRow } from './facts.ts';
import type { Reader } from './passage.ts';

/** The things of a note as one reader calls them, in the grammar that the sentences count on. */
export interface Words {
  /** Customer: whole clauses, "the door seal had failed". Office: "door gasket failed". */
  found(rows: readonly SeenRow[]): string;
  /** "A low charge": what can stand behind "the cause was". */
  causes(ids: readonly CauseId[]): string;
  /** "The thermostat or the door switch" */
  suspects(of: CircuitSuspects): string;
  /** What somebody did, behind "we". */
  work(rows: readonly CalledRow[]): string;
  /** What somebody is to do, behind "to". */
  todo(advised: ToDo): string;
  /** Customer: "the power switch of the unit is locked out". Office: "disconnect locked out". */
  left(all: readonly LeftOpen[]): string;
  readonly danger: string;
}

/** What was found, with the words that it was told in where it was told on this visit. */
export interface SeenRow extends FoundRow {
  readonly words?: string;
}

/** What is to be done, and to what. */
export interface ToDo {
  readonly do: Recommendation['do'];
  readonly part: Recommendation['part'];
  readonly called?: string;
}

export const WORDS: Record<Reader, (naming: Naming) => Words> = {
  customer: customerWords,
  office: officeWords,
};

function customerWords(naming: Naming): Words {
  return {
    found: (rows) => clausesOf(byPart(rows), naming),
    causes: (ids) => ids.map((id) => PLAIN_CAUSES[id]).join(' or '),
    suspects: ({ suspects, together }) =>
      chosen(
        suspects.map((id) => PLAIN_SUSPECTS[id]),
        together,
      ),
    work: (rows) => workWords(rows, PLAIN_WORK, naming),
    todo: (advised) => todoWords(advised, PLAIN_WORK, naming),
    left: (all) =>
      listed(
        all.map(({ part, as }) => {
          const be = isMany(part) ? 'are' : 'is';
          return `${naming.name(part)} ${be} ${PLAIN_LEFT[as]}`;
        }),
      ),
    danger: 'the windings of the compressor are in contact with its metal housing',
  };
}

function officeWords(naming: Naming): Words {
  return {
    found: (rows) =>
      listedClauses(
        byPart(rows).map(
          ({ part, states }) =>
            `${PARTS[part]} ${states.map((seen) => tradeState({ part, ...seen })).join(' and ')}`,
        ),
      ),
    causes: (ids) => ids.map((id) => CAUSE_PHRASES[id]).join(' or '),
    suspects: ({ suspects, together }) =>
      chosen(
        suspects.map((id) => SUSPECTS[id]),
        together,
      ),
    work: (rows) => workWords(rows, TRADE_WORK, naming),
    todo: (advised) => todoWords(advised, TRADE_WORK, naming),
    left: (all) => listed(all.map(leftWords)),
    danger: 'a compressor winding is grounded',
  };
}

/** What no part of ours is called by has the words that it was advised in. */
function todoWords(
  { do: kind, part, called }: ToDo,
  verbs: typeof PLAIN_WORK,
  naming: Naming,
): string {
  if (part !== null) return verbs[kind].todo.replace('X', naming.name(part));
  if (called === undefined) return verbs[kind].todoAlone;
  if (kind === 'asSaid') return called;
  return verbs[kind].todo.replace('X', `the ${called}`);
}

function chosen(names: readonly string[], together: boolean): string {
  return together ? listed(names) : listed(names).replace(/ and ([^,]*)$/, ' or $1');
}

interface OfPart {
  readonly part: PartId;
  readonly states: readonly Pick<Finding, 'state' | 'words'>[];
}

/** A fan that is noisy and not running is one fan. */
function byPart(rows: readonly SeenRow[]): readonly OfPart[] {
  const parts = [...new Set(rows.map(({ part }) => part))];
  return parts.map((part) => ({
    part,
    states: rows
      .filter((row) => row.part === part)
      .map(({ state, words = '' }) => ({ state, words })),
  }));
}

function clausesOf(all: readonly OfPart[], naming: Naming): string {
  return listedClauses(
    all.map(({ part, states }) => {
      const told = statesWords([...new Set(states.map((state) => plainState(part, state)))]);
      return `${naming.name(part)} ${isMany(part) ? told.replace(/^was /, 'were ') : told}`;
    }),
  );
}

/** "Was noisy and not running": the verb once, where all of them have the same. */
function statesWords(states: readonly string[]): string {
  const isShared = states.every((state) => state.startsWith('was '));
  return isShared
    ? `was ${listed(states.map((state) => state.slice('was '.length)))}`
    : listed(states);
}

/** Where one has an "and" of its own, a comma tells where the next begins. */
function listedClauses(clauses: readonly string[]): string {
  const last = clauses.at(-1) ?? '';
  if (clauses.length < 2 || !clauses.some((each) => / and /.test(each))) return listed(clauses);
  return `${clauses.slice(0, -1).join(', ')}, and ${last}`;
}

/** "Brushed and washed that coil": what was done to one part in a row is told of it once. */
function workWords(rows: readonly CalledRow[], verbs: typeof PLAIN_WORK, naming: Naming): string {
  const parts = [...new Set(rows.map(({ part }) => part))];
  const each = parts.flatMap((part) => {
    const ofPart = rows.filter((row) => row.part === part);
    const own = ofPart.map(({ did }) => verbs[did]);
    if (part === null) return ofPart.map((row) => doneToNone(row, verbs));
    const name = [naming.name(part), ...ofPart.flatMap(calledBehind)].join(' ');
    const plain = own.filter(({ done }) => done.endsWith(' X'));
    const rest = own.filter(({ done }) => !done.endsWith(' X'));
    const first = plain.map(({ done }) => done.slice(0, -' X'.length));
    return [
      ...(first.length === 0 ? [] : [`${first.join(' and ')} ${name}`]),
      ...rest.map(({ done }) => done.replace('X', name)),
    ];
  });
  return listed(each);
}

/** "Replaced that relay (Copperline 012 contactor)" */
const calledBehind = ({ called }: CalledRow): readonly string[] =>
  called === undefined ? [] : [`(${called})`];

const doneToNone = ({ did, called }: CalledRow, verbs: typeof PLAIN_WORK): string =>
  called === undefined ? verbs[did].doneAlone : verbs[did].done.replace('X', `the ${called}`);

/** When it is to be done, as it follows a verb: "by Friday, December 25, 2026", "on Tuesday, …", "before summer". */
export function whenOf(made: Made): string {
  const words = whenWords(made, null);
  return /^(Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day/.test(words) ? `on ${words}` : words;
}

/** What such a fault does: of the cause, else of the first thing seen that is itself a fault. */
export function effectOf(cause: CauseId | null, rows: readonly SeenRow[]): string | null {
  const meant = cause ?? rows.map(faultSeen).find((id) => id !== null) ?? null;
  return meant === null ? null : EFFECTS[meant];
}

/** A coil seen clogged is the fault itself; a sweating drier only points to one. */
export function faultSeen(seen: SeenRow): keyof typeof EFFECTS | null {
  const { part, state } = seen;
  if (switchesTheUnit(seen) && saysStuckClosed(seen.words ?? '')) return 'neverOff';
  if (part === 'liquidLineSolenoid' && coilFault(seen) !== null) return 'solenoidShut';
  if (state === 'leaking' && HOLDS_REFRIGERANT.has(part)) return 'undercharge';
  return SEEN[part]?.[state] ?? null;
}

/** A contactor of the heaters or of a fan lets nothing run on but those. */
const switchesTheUnit = ({ part, words = '' }: SeenRow): boolean =>
  SWITCHES_THE_UNIT.has(part) && !/\b(?:defrost|heater|fan) contactor\b/i.test(words);
const SWITCHES_THE_UNIT: ReadonlySet<PartId> = new Set<PartId>(['contactor', 'temperatureControl']);

const HOLDS_REFRIGERANT: ReadonlySet<PartId> = new Set<PartId>([
  'condenser',
  'evaporator',
  'expansionValve',
  'capillaryTube',
  'filterDrier',
  'sightGlass',
  'receiver',
  'accumulator',
  'oilSeparator',
  'liquidLine',
  'suctionLine',
  'dischargeLine',
  'serviceValve',
  'suctionServiceValve',
  'dischargeServiceValve',
  'kingValve',
  'accessFitting',
  'joint',
]);

const SEEN: Partial<Record<PartId, Partial<Record<FoundRow['state'], keyof typeof EFFECTS>>>> = {
  condenser: { dirty: 'dirtyCondenser', plugged: 'dirtyCondenser' },
  condenserFan: {
    notRunning: 'condenserFanOut',
    failed: 'condenserFanOut',
    humming: 'condenserFanOut',
  },
  condenserFanMotor: {
    notRunning: 'condenserFanOut',
    failed: 'condenserFanOut',
    burnt: 'condenserFanOut',
  },
  evaporator: { iced: 'icedCoil', plugged: 'icedCoil', dirty: 'icedCoil' },
  evaporatorFan: {
    notRunning: 'evaporatorFanOut',
    failed: 'evaporatorFanOut',
    humming: 'evaporatorFanOut',
  },
  evaporatorFanMotor: {
    notRunning: 'evaporatorFanOut',
    failed: 'evaporatorFanOut',
    burnt: 'evaporatorFanOut',
  },
  doorGasket: { failed: 'openBox', missing: 'openBox', loose: 'openBox', leaking: 'openBox' },
  door: { open: 'openBox' },
  liquidLineSolenoid: { closed: 'solenoidShut' },
  filterDrier: { plugged: 'liquidLineRestriction', cold: 'liquidLineRestriction' },
  expansionValve: { plugged: 'valveStarving', closed: 'valveStarving', iced: 'valveStarving' },
  expansionValveBulb: { loose: 'valveFlooding' },
  capillaryTube: { plugged: 'capillaryBlocked' },
  defrostHeater: { burnt: 'defrostFailed', open: 'defrostFailed', failed: 'defrostFailed' },
  startCapacitor: { failed: 'startGear', open: 'startGear', burnt: 'startGear' },
  startRelay: { failed: 'startGear', open: 'startGear', burnt: 'startGear' },
  overload: { open: 'overloadOpen', tripped: 'overloadOpen' },
  headPressureValve: { open: 'lowAmbient', failed: 'lowAmbient' },
  contactor: { open: 'noPower', failed: 'noPower', burnt: 'noPower' },
  transformer: { open: 'noPower', failed: 'noPower', burnt: 'noPower' },
  fuse: { open: 'noPower', failed: 'noPower', burnt: 'noPower' },
  breaker: { tripped: 'noPower', open: 'noPower' },
  disconnect: { open: 'noPower' },
  plug: { open: 'noPower' },
};
