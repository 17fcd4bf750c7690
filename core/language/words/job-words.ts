import type { TokenRange } from './clause.ts';
import type { Token } from '../../grammar/tokens.ts';
import { FILLERS } from './fillers.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import { WordSet } from './word-set.ts';

/** Hardly said of anything but a job like ours: one of them tells. */
const OURS = new WordSet(
  'schrader schraders pinhole braze brazed brazing rebrazed soldered nitrogen evac evacuate evacuated evacuating vac purge purged ' +
    'manifold refrigerant freon undercharged overcharged overfilled recharge recharged flared halide dye sniffer ultrasonic soaped ' +
    'backseated frontseated midseated seated compressor compressors scroll condensing condenser condensers evaporator evaporators evap ' +
    'contactor contactors capacitor capacitors overload klixon gfi gfci transformer windings winding megohm megger megged ' +
    'hopscotched jumpered phasing grounded thermostat stat txv superheat subcooling subcool suction discharge ' +
    'defrost defrosts defrosting defrosted drier dryer receiver accumulator solenoid crankcase gasket gaskets microns micron ' +
    'psi amps ohms ohm voltage volts subcooled condensate lpc hpc rla lra eev subcooler hoses pressures',
);

/** Said of many things: two different ones tell. */
const OFTEN_OURS = new WordSet(
  'leg legs phase phases neutral power breaker breakers fuse fuses valve valves pump line lines gas charge charged box case unit ' +
    'fins fin ceiling loaded overloaded shelves harvest fan fans blade blades shroud guard switch wire wires wiring block board terminal terminals strip drain pan coil coils ' +
    'cap caps stem stems packing gland core cores glass tank bottle jug cylinder drum scale iced frost frosted snow oil air ' +
    'airflow frozen pressure pressures head needle needles hose gages gage meter probe reset tripped trips tripping popped popping kicks ' +
    'cycles cycling cycled humming hums buzzing chattering chatters rotation arcing burnt shorted short shorts open dead stuck plugged ' +
    'leak leaks leaking bubbles bubbling foamy heater heaters relay relays contacts resistor disconnect ground disconnected ' +
    'vacuum torch virgin recovered recovery reclaimed weighed cooler freezer cooling curtains hinge louvers sensor sensors bulb clock timer termination ' +
    'saturated flash flashing starved starving flooding flooded hunting low high pounds ounces degrees temp temps temperature ' +
    'pins rubbing bearing bearings mounts motor motors liner foam insulation side product stock ambient outlet receptacle cord plug toggle lost vented ounce electrical smells ' +
    'smelled cooked detector startup leveled kick kicked cracked froze virgin drops unplugged hot warm cold ' +
    'plumber electrician crew staff manager batch batches slab slabs cubes harvests descaler sanitizer',
);

/** What was found or done, and no name. */
const TOLD = new WordSet(
  'brazed rebrazed soldered evacuated purged undercharged overcharged overfilled recharged soaped backseated frontseated midseated ' +
    'hopscotched jumpered phasing grounded defrosted charged iced frosted frozen reset tripped trips tripping popped popping kicks cycles ' +
    'cycling cycled humming hums buzzing chattering chatters arcing burnt shorted shorts dead stuck plugged leak leaks leaking bubbling foamy ' +
    'recovered reclaimed weighed flash flashing starved starving flooding flooded hunting rubbing disconnected is are was were lost vented leveled drops unplugged hot warm cold cooked smells smelled discarded tossed pitched dumped transferred spoiled melted thawed temped',
);

/** What was found of the food, or done with it. */
const FOOD = new WordSet(
  'food foods product products meat meats milk lettuce patties chicken fish beef pork shrimp dairy produce inventory stock cream eggs cheese salad salads sauce soup',
);
const FOOD_TOLD = new WordSet(
  'discarded tossed pitched dumped threw tossing pitching dumping throwing moving transferring discarding trashed transferred spoiled melted thawed thawing melting temped refrozen frozen soft mushy warm sweating loss moved',
);

/** Names alone answer what a number is of. */
const NAMES = WordSet.ofAll([
  OURS,
  OFTEN_OURS,
  FILLERS,
  new WordSet([...ONES, ...TEENS, ...TENS, 'pound', 'amp', 'volt', 'foot', 'inch']),
  new WordSet('or for of on in my our their its one left right cup first second next last inches'),
]);

/** Whether its words are of the job, though no rule knows what they tell. */
export function isJobTalk(tokens: readonly Token[], { start, end }: TokenRange): boolean {
  if (FOOD.hasAny(tokens, start, end) && FOOD_TOLD.hasAny(tokens, start, end)) return true;
  let [often, isOurs, isTold] = [0, false, false];
  let last: Token | null = null;
  for (let at = start; at < end; at += 1) {
    const token = tokens[at];
    if (token === undefined) break;
    if (OURS.has(token)) isOurs = true;
    if (OFTEN_OURS.has(token) && token.text !== last?.text) {
      often += 1;
      last = token;
    }
    if (!NAMES.has(token) || TOLD.has(token)) isTold = true;
  }
  return isTold && (isOurs || often > 1);
}
