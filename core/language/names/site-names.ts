import type { Tags } from '../../grammar/nodes.ts';
import { Grammar } from '../../grammar/compile.ts';
import { Matcher } from '../../grammar/match.ts';
import { HOLES } from '../holes.ts';
import { tokenise } from '../words/tokenise.ts';

/** What a place of business is called last. */
export const TRADE =
  '(deli|grill|diner|cafe|market|restaurant|tavern|pub|bakery|hotel|inn|motel|elementary|high school|middle school|school|church|hospital|mart|pizzeria|pizza|bistro|steakhouse|club|bar and grill|brewery|cafeteria|kitchen|foods|grocery|produce|meats|catering|creamery|buffet|barbecue|liquors|florist|pharmacy|lodge|center|academy|college|store|stop|gas|express|house|hall|company|supermarket|seafood|donuts|bagels|tacos|cantina|taqueria|trattoria|smokehouse|butcher|dairy|farms|orchard|nursing home|hospice|lounge|saloon|casino|arena|theater|daycare|preschool)';
export const ENDS_AS_TRADE = new RegExp(`\\b${TRADE}$`, 'i');

/** What nobody calls anything else than a business: a name that ends so needs no "at", and no capitals. */
export const ENDS_AS_BUSINESS =
  /\b(?:deli|grill|diner|cafe|market|restaurant|tavern|pub|bakery|hotel|inn|motel|elementary|school|church|hospital|mart|pizzeria|pizza|bistro|steak ?house|brewery|cafeteria|grocery|catering|creamery|buffet|barbecue|liquors|florist|pharmacy|lodge|academy|college|supermarket|seafood|donuts|bagels|tacos|cantina|taqueria|trattoria|smokehouse|(?:fish|chop|ale|coffee|crab|oyster|pancake|waffle|tea|ice) house|(?:country|golf|yacht|tennis|night) club|(?:coffee|sandwich|butcher|donut|flower|ice cream|barber) shop|(?:convenience|corner|general|grocery|liquor) store|gas station|food bank|farms|orchard|nursing home|hospice|lounge|saloon|casino|theater|daycare|preschool|roadhouse|eatery|gastropub|sushi|noodles|ramen|wings|burgers|clinic|vineyard|winery)$|(?<=\w \w+ )bar$/i;

/** What is said before the name of where one is. */
export const LEAD_TO_SITE =
  /^(?:(?:ok|okay|so|alright|well|hey|yeah|and) )*(?:(?:i'm|i am|we're|we are) )?(?:(?:just|got|made it|pulled up|rolled up|here|back|over|out|on site|arrived) )*(?:at|site is) (?:the )?/i;

const ROAD =
  '(?:street|avenue|road|highway|hwy|route|boulevard|drive|lane|parkway|pike|turnpike|interstate|expressway|bypass|main|broadway|(?:second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|\\d+(?:st|nd|rd|th))(?=$| (?:and|street|avenue|st|ave)))';
/** "Quick Stop on Highway Nine": where it stands, which tells it from the others of its name. */
const ON_ROAD = new RegExp(
  `,? (?:(?:down|up|over|out|off) )?(?:on|off|off of|by) (?:the )?(?:[\\w']+ ){0,2}${ROAD}(?: [\\w']+){0,2}$`,
  'i',
);

/** The name alone. */
export const withoutRoad = (name: string): string => name.replace(ON_ROAD, '');

/** A name of a site, and the kind of unit that was said behind it without a pause. */
interface SiteAndUnit {
  readonly site: string;
  readonly unit: Tags | null;
}

const GRAMMAR = new Grammar();
const UNIT = HOLES['equipment'];
const UNITS = UNIT === undefined ? null : GRAMMAR.compile(UNIT);
const COUNTS = ['one', 'two', 'three', 'four', 'five', 'six'];
const DOORS = new RegExp(`^ (?:(${COUNTS.join('|')})|(\\d)) (?:doors?|section)$`, 'i');
/** "Site is Walk In Coolers Incorporated" */
const CAPITALS =
  /^(?:[A-Z0-9&][\w'&.-]*|of|and|the|on|in)(?: (?:[A-Z0-9&][\w'&.-]*|of|and|the|on|in))*$/;

/** "At Millpond Market on the walk-in" */
const LEADS_TO_UNIT =
  /(?: here)? (?:on|for|working on|looking at|to look at|about)(?: (?:the|a|an|their|that))?$/i;
/** "… the meat one": which of several. */
const MOST_BEHIND = 4;

/** "Millpond Market walk-in cooler": the name ends where a kind of unit begins, if it is a name by itself. */
export function unitBehind(value: string): SiteAndUnit {
  const tokens = tokenise(value);
  const matcher = new Matcher(GRAMMAR, tokens);
  for (const [at, { start }] of tokens.entries()) {
    if (at < 2 || UNITS === null) continue;
    const before = value.slice(0, start).trim();
    const site = before.replace(LEADS_TO_UNIT, '');
    const longest = matcher.run(UNITS, at).toSorted((one, other) => other.end - one.end)[0];
    if (longest === undefined || CAPITALS.test(value)) continue;
    const rest = value.slice(tokens[longest.end - 1]?.end ?? value.length);
    const isName = ENDS_AS_TRADE.test(site) || CAPITALS.test(site);
    const doors = doorsIn(rest);
    const isToldOn = site !== before && rest.trim().split(/\s+/).length <= MOST_BEHIND;
    if (isName && (rest === '' || doors !== null || isToldOn)) {
      const kind = longest.tags[0] ?? {};
      return { site, unit: doors === null ? kind : { ...kind, doors: { number: doors } } };
    }
  }
  return { site: value, unit: null };
}

const CALL =
  /\s(?:(?:for|doing|here for|to do|on)(?: (?:a|an|the|their|our|my))? )?(?:(?:quarterly|monthly|yearly|annual|semi[- ]annual|spring|summer|fall|winter|scheduled|regular|routine) )*(?:(?:pms?|p m|(?:maintenance|inspection|service|tune[- ]?up|check[- ]?up)(?= (?:call|visit|round|today|this)|$))\b.*)$/i;

/** "Petal and stem it's a flower shop on fourth": what it is stands behind its name. */
const WHAT_IT_IS =
  /(?<=\w) (?:it's|it is|its(?= (?:a|an|the) )|they're|they are|that's|that is|this is) (?:(?:a|an|the|like|just|their|that|this) )+(?:(?:little|big|small|old|new) )*(.*)$/i;
const kindBehind = (value: string): string =>
  withoutRoad(WHAT_IT_IS.exec(value)?.[1] ?? '').replace(/ (?:with|that|where|and) .*$/i, '');
const isKind = (kind: string): boolean => ENDS_AS_TRADE.test(kind) || /\bshop$/i.test(kind);

/** Whether the words close as the name of a business does, or tell behind it what kind it is. */
export const closesAsTrade = (words: string): boolean =>
  ENDS_AS_TRADE.test(withoutRoad(words)) || isKind(kindBehind(words));

/** "Brookhaven Elementary quarterly PM three boxes": what the call is for is no part of the name, nor is what the place is. */
export function callBehind(value: string): { readonly site: string; readonly call: string | null } {
  const kind = kindBehind(value);
  const site = kind === '' ? value.replace(CALL, '') : value.replace(WHAT_IT_IS, '');
  const isName =
    site !== value && (ENDS_AS_TRADE.test(site) || CAPITALS.test(site) || isKind(kind));
  return isName ? { site, call: value.slice(site.length).trim() } : { site: value, call: null };
}

function doorsIn(rest: string): number | null {
  const [, word, figure] = DOORS.exec(rest) ?? [];
  if (figure !== undefined) return Number(figure);
  return word === undefined ? null : COUNTS.indexOf(word.toLowerCase()) + 1;
}

const GAS = HOLES['refrigerant'];
const GASES = GAS === undefined ? null : GRAMMAR.compile(GAS);

/** "Two door reach-in on the line one thirty four a": the name ends where a refrigerant with its letter begins. */
export function gasBehind(value: string): { readonly name: string; readonly gas: Tags | null } {
  const tokens = tokenise(value);
  const matcher = new Matcher(GRAMMAR, tokens);
  if (GASES === null || !/[\d\s](?:[a-f]|y ?f|z ?e)$/i.test(value))
    return { name: value, gas: null };
  for (const [at, { start }] of tokens.entries()) {
    const found =
      at === 0 ? undefined : matcher.run(GASES, at).find(({ end }) => end === tokens.length);
    if (found !== undefined) {
      const name = value
        .slice(0, start)
        .replace(/ (?:on|with|it's|its|using|charged with|and)? *$/i, '');
      return { name: name.trim(), gas: found.tags[0] ?? {} };
    }
  }
  return { name: value, gas: null };
}

/** "Mill street", "north county road": where a place is, and not what it is called. */
export const isRoad = (name: string): boolean => IS_ROAD.test(name);
const IS_ROAD = new RegExp(`^(?:the )?(?!my |our |your |a )(?:[a-z']+ ){1,3}${ROAD}$`, 'i');
