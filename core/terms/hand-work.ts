/** What hands make of a thing, past tense, for a pattern: it is another one afterwards, and somebody pays for it. */
export const HANDS_MADE =
  'straightened|taped|zip tied|strapped|shimmed|leveled|swept|mopped|rewired|rerouted|insulated|' +
  'greased|oiled|lubed|sanded|filed|dressed|cleaned|wiped|scraped|chipped|thawed|steamed|' +
  'cut(?! (?:out|in|off) (?:on|at|by))|bent|drilled|bolted|screwed|mounted|rehung|relocated|' +
  'shortened|extended|capped|sealed|caulked|painted|drained|flushed|vacuumed|brushed|washed|rinsed|' +
  'hosed|sprayed|treated|tightened|loosened|adjusted|swapped|changed|replaced|fixed|repaired|patched|' +
  'soldered|brazed|welded|crimped|pinched|unsoldered|sweated|sawed|spliced|cleared|reinstalled|' +
  'installed|rigged|snugged|clipped|wrapped|stuffed|routed|tucked|wedged|pinned|trimmed|reamed|' +
  'deburred|swaged|flared|soaped|threaded|fitted|seated|rebuilt';

/** What they do beside that: look, try, take away and put back. */
export const HANDS_DID =
  'discharged|moved|unplugged|plugged|raised|lowered|labeled|tagged|marked|photographed|bagged|' +
  'checked|rechecked|double checked|inspected|verified|confirmed|tested|tried|showed|walked|emptied|' +
  'dumped|unbolted|unscrewed|reset|programmed|removed|pulled|put|pushed|pried|knocked|tapped|freed|' +
  'spun|worked|set|turned|propped|shut|closed|opened|disconnected|reconnected|locked|unlocked|threw|' +
  'saved|kept|left|mashed|nudged|jiggled|wiggled|whacked|banged|bumped|hooked|unhooked|squirted|' +
  'poured|topped|mixed|clamped|snaked|fished|leak checked|heated|chased|traced|jumped|jumpered|' +
  'bypassed|blowed|nipped|backed|eased|primed|bled|dropped in|hit|' +
  'took (?:a )?(?:picture|pictures|photo|photos)|blew|hung|ran (?:the|a|an|some|new)|reused';
