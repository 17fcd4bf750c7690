const words = (list: string): readonly string[] => list.split(' ');

/** Whose people they are, where that is said: "the kitchen manager", "a health inspector". */
export const KINDS_OF_PEOPLE = words(
  'health county fire food sales delivery shift store kitchen night day assistant head sous ' +
    'lunch office general district front dish new old young older cafeteria produce meat deli ' +
    'bakery dairy',
);

/** Who speaks at a site and is told things, besides the customer. */
export const PEOPLE = words(
  'owner manager cook chef kitchen staff guy tech driver store people employee lady ladies ' +
    'gal girl woman man boss custodian janitor cashier clerk bartender waitress waiter server ' +
    'principal nurse baker butcher fella dude kid cooks barista host hostess dishwasher ' +
    'supervisor super foreman florist pharmacist gm landlord maintenance security secretary ' +
    'dispatcher inspector neighbor rep salesman technician attendant bookkeeper director tenant',
);

/** One of them, for a pattern: "kitchen manager". */
export const SOMEBODY = `(?:(?:${KINDS_OF_PEOPLE.join('|')}) )?(?:customer|${PEOPLE.join('|')})`;
