import { throughPart } from './through-part.ts';
import { fixed, leftToAsk } from './reading-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { remark } from '../plain-means.ts';

/** Air that a coil cools; what gets warmer on its way is a pipe's, and which row that is nobody tells. */
const throughCoil: Means = (tags, frame) =>
  throughPart('evaporator', tags, frame) ?? remark(tags, frame);

const THING =
  '((gas|oil|fluid|dry) cooler [(out|outlet|exit|leaving|inlet)]|(glycol|brine|loop|secondary|chiller) [(bath|tank|reservoir|supply|return|loop|temp|temperature|leaving|coming off|coming back|in|out)]|(bath|sump|reservoir) [(temp|temperature|water)]|flash (tank|gas|vessel) [pressure]|(net oil|oil|oil net|oil differential|oil pump) pressure|intermediate pressure|(ice|slab|bridge) thickness|[relative] humidity)';
const AT =
  '(<link>|is (only|still|up|down|back) [(at|to)]|[is] (leaving|going out|coming off|coming back|returning) [at])';
const BACK =
  '((coming|going) (back|in|out)|back|returning|(supply|return|line|leaving|in|out) [line] [(to|at|from) the (taps|line|tank|bath|case|cases)]|(to|at) the (taps|line|case|cases))';
const ROOM =
  '(dining (room|area|hall)|sales floor|show room|showroom|shop floor|lobby|break room|stock room|storage room|stock area|front of house|bar area|store room|front of the store)';
const STANDS =
  '(the unit|it|she|this thing|the (machine|case|condenser|condensing unit)) (is|sits|stands) [(sitting|standing|right|just)] [(right|out)] (in it|there|in there|out there|in the middle of it)';

/** What has no row on the sheet, and rooms that may not be a condenser's air. */
export const ROWLESS_RULES: readonly Rule[] = [
  rule(
    `[the] ${THING} ${AT} <amount> [[and] [the] ${BACK} ${AT} <amount:back> [[and] [the] ${BACK} ${AT} <amount:more>]]`,
    remark,
    {
      examples: ['glycol is leaving at twenty nine and coming back at thirty three'],
    },
  ),
  rule(
    '[the] (glycol|brine|water|circulator|circulating|recirculating|condensate|drain|chiller|loop|oil) (pump|motor) [(is|amps|amp draw)] [(is|are|at|pulling|drawing|pulls|draws|running at)] <amount>',
    remark,
    { examples: ['glycol pump is pulling two point one'] },
  ),
  rule(
    '[the] (coil|evaporator|evap) [number] <nth:which> in <amount:in> out <amount:out>',
    throughCoil,
    {
      examples: ['coil one in eighteen out twenty six'],
    },
  ),
  rule(
    `[the] ${ROOM} [(temp|temperature|air)] ${AT} <amount> [and] ${STANDS}`,
    fixed('ambientTemp'),
    {
      examples: ['dining room is at seventy and the unit is sitting right in it'],
    },
  ),
  rule(`[the] ${ROOM} [(temp|temperature|air)] ${AT} <amount>`, leftToAsk, {
    examples: ['dining room is at seventy'],
  }),
];
