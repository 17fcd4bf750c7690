/** What is kept cold, as whoever asks about it says it. */
export const FOOD =
  '(food|foods|product|products|meat|meats|milk|dairy|produce|chicken|fish|seafood|beef|pork|turkey|shrimp|salmon|eggs|cheese|yogurt|butter|ice cream|lettuce|salad|salads|soup|sauce|sauces|dough|stock|inventory|leftovers|deli meat|cream|stuff [(in there|in it|in the box)])';

/** Who is told, and who throws out. */
export const THEM =
  '(them|him|her|the (customer|owner|manager|chef|cook|cooks|staff|kitchen|crew|lady|guy|people)|customer|owner|manager|staff|everybody|everyone|~~<who>)';

/** What lies in freezers and coolers in packs. */
const FROZEN =
  'yogurts|milks|cheeses|creams|juices|(fish|mozzarella|cheese|bread) sticks|(french|waffle|sweet potato|curly) fries|(chicken|fish) (nuggets|tenders|strips|breasts|thighs|fillets|filets|patties|wings)|nuggets|tenders|chicken breasts|hash browns|tater tots|tots|waffles|pancakes|popsicles|ice pops|ice cream (bars|sandwiches|cakes)|sherbet|sorbet|gelato|frozen yogurt|tv dinners|frozen (dinners|entrees|meals|goods|stuff|foods|items)|dinners|entrees|egg rolls|spring rolls|dumplings|burritos|tacos|tamales|tortillas|ravioli|lasagna|meatballs|meatloaf|corn dogs|sausages|bratwurst|brats|bologna|pepperoni|salami|jerky|crawfish|catfish|tilapia|halibut|squid|sodas|soda|pop|cans of (soda|pop|beer)|beers|bottles of (beer|water|wine)|kegs|bagels|biscuits|croissants|rolls|donuts|doughnuts|muffins|pie crusts|dough balls|vegetables|veggies|peas|corn|carrots|celery|broccoli|apples|oranges|grapes|bananas|sour cream|cottage cheese|cream cheese|string cheese|milkshake mix|shake mix|soft serve [mix]|whipped cream|whipping cream|eggnog|orange juice|coleslaw|potato salad|pasta salad|egg salad|tuna salad|chicken salad|hummus|guacamole|lunch meat|cold cuts|roast beef|corned beef|pulled pork|brisket|short ribs|turkeys|chickens|hams|roasts|steaks';

/** Whatever else is kept cold and probed: told of, and asked about by nobody. */
export const KEPT = `(${FOOD.slice(1, -1)}|lobster|lobsters|crab|crabs|oysters|clams|mussels|scallops|prawns|shellfish|cod|sushi|tofu|rice|pasta|noodles|beans|pickles|olives|tomatoes|onions|peppers|mushrooms|cucumbers|potatoes|fries|wings|steak|steaks|burgers|hamburger|hamburgers|patties|hot dogs|ribs|lamb|veal|duck|pudding|custard|cheesecake|cake|cakes|pie|pies|pastries|pizza|pizzas|juice|wine|flowers|salsa|gravy|chili|broth|sandwiches|wraps|fruit|berries|strawberries|melon|greens|spinach|cabbage|batter|half and half|creamer|mayo|ham|bacon|sausage|tuna|dressing|${FROZEN})`;
