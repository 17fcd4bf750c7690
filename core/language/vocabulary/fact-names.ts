import type { EquipmentId, MeteringId, SightGlassId } from '../../terms/names.ts';

export const EQUIPMENT_NAMES: Record<EquipmentId, readonly string[]> = {
  reachIn: [
    'reach in',
    'reach in freezer',
    '~reach in (cooler|fridge|refrigerator|unit|box)',
    '~(freezer|cooler|fridge|undercounter|under counter|upright) reach in',
    '~(upright|chest|under counter|undercounter|work top|worktop|back bar|bottle|milk) (cooler|fridge|refrigerator|freezer)',
    '~(sandwich|salad|pizza|dairy|drop front|drop in|dual side|double sided|school) (reach in|milk cooler|cooler)',
    '~(upright|fridge|chef base|undercounter|under counter unit)',
  ],
  walkInCooler: [
    'walk in [cooler]',
    '~cooler walk in',
    '~~(beer|keg|dairy|produce|meat|deli|milk|floral) (cooler walk in|walk in cooler|walk in)',
    '~(walkin cooler|walk in box|walk in fridge)',
    '~(beer cave|keg cooler|keg room|produce cooler)',
    '~~(walk in|modular) (cold|chill|chiller|cool|cooler) room',
    '~~((cold|chill|chiller|cool|cooler) room|coldroom|coolroom)',
    '~~(cold|chill|chiller|chilled) store [room]',
  ],
  walkInFreezer: [
    'walk in freezer',
    '~freezer walk in',
    '~~(freezer|freezing|frozen|deep freeze) (room|store|cold room|cold store)',
    '~~(low temp|low temperature) (cold room|cold store|room)',
  ],
  prepTable: [
    'prep table',
    '~(pizza|sandwich|salad|sub) prep [(table|unit|cooler|fridge)]',
    '~~(freezer|frozen|low temp) (prep table|prep)',
    '~(sandwich table|pizza table|prep cooler|sandwich prep|salad table|prep unit)',
  ],
  displayCase: [
    'display case',
    '~(open|glass door|glass front|refrigerated|pastry|meat|bakery|multi deck|grab and go) (display case|case|merchandiser|display)',
    '~(display cooler|merchandiser|deli case|open case|glass door merchandiser|bakery case|meat case)',
    '~(glass door|glass front|display) (cooler|freezer|fridge|refrigerator)',
    '~[(open air|air curtain|open|curved glass|refrigerated)] (open air|air curtain|sandwich|grab n go|dairy|produce|beverage|sushi|seafood|floral|cheese|lunch meat|open front|curved glass|service) (case|display|merchandiser)',
    '~(frozen food|ice cream) (case|display|freezer|cabinet)',
    '~freezer case',
    '~~(freezer|frozen|frozen food|ice cream|low temp) (display case|display|merchandiser)',
    '~~[(open|big|low|low temp|medium temp|frozen|dairy|meat|deli|produce|beverage|floral)] (multi deck|multideck) [(dairy|meat|deli|produce|beverage|floral)] [(case|display|merchandiser|cooler|freezer)]',
    '~~[(open|low temp|frozen|frozen food|ice cream|meat|big)] (coffin|bunker|island|end cap|service deli|service meat|self serve|prepared food|deli|open dairy|open meat|open produce|open deli) (case|display|merchandiser|freezer)',
  ],
  iceMachine: [
    'ice machine',
    '~(ice maker|icemaker|cuber|flaker|nugget machine|ice (flaker|cuber))',
  ],
  remoteCondensingUnit: [
    'condensing unit',
    '~(remote|outdoor) condensing unit',
    '~rooftop condensing unit',
  ],
};

export const METERING_NAMES: Record<MeteringId, readonly string[]> = {
  txv: [
    'txv',
    '~(t x v|tev|t e v|t x valve|tx valve|expansion valve|thermostatic expansion valve)',
    '~~(txvs|t x vs|tevs|expansion valves)',
    '~~(thermostatic valve|thermo expansion valve|thermal expansion valve|thermo valve)',
  ],
  capTube: ['cap tube', '~capillary [tube]'],
  eev: ['~(eev|e e v|electronic expansion valve|e x v|electronic valve)'],
  orifice: ['~(orifice|fixed orifice|piston|fixed bore)'],
};

export const SIGHT_GLASS_NAMES: Record<SightGlassId, readonly string[]> = {
  clear: [
    'is clear',
    '~(clear|is full|looks clear|full|is solid|is clear of bubbles|has no bubbles|looks good|no bubbles|(cleared|has cleared|is cleared) [right] [up]|just cleared [up])',
  ],
  bubbling: [
    'is bubbling',
    'has bubbles',
    '~(bubbling|is flashing|flashing|bubbles|is showing bubbles|showing bubbles|shows bubbles|has a few bubbles|is full of bubbles|foaming|is foaming|foamy|is foamy|is frothy|is all foam|is full of foam|has some bubbles|(has got|got) [(a lot of|lots of|some|a few)] bubbles [in it])',
  ],
  empty: ['is empty', '~(empty|[is] bone (dry|empty)|is dry|has nothing in it|shows nothing)'],
};

/** What only the count of its doors tells from a walk-in. */
export const DOORED_NAMES: Partial<Record<EquipmentId, readonly string[]>> = {
  reachIn: ['(freezer|cooler)', '~(fridge|refrigerator|unit|box|cabinet)'],
};
