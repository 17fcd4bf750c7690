/** What is kept cold, as whoever asks about it says it. */
export const FOOD =
  '(food|foods|product|products|meat|meats|milk|dairy|produce|chicken|fish|seafood|beef|pork|turkey|shrimp|salmon|eggs|cheese|yogurt|butter|ice cream|lettuce|salad|salads|soup|sauce|sauces|dough|stock|inventory|leftovers|deli meat|cream|stuff [(in there|in it|in the box)])';

/** Who is told, and who throws out. */
export const THEM =
  '(them|him|her|the (customer|owner|manager|chef|cook|cooks|staff|kitchen|crew|lady|guy|people)|customer|owner|manager|staff|everybody|everyone)';

/** Whatever else is kept cold and probed: told of, and asked about by nobody. */
export const KEPT = `(${FOOD.slice(1, -1)}|lobster|lobsters|crab|crabs|oysters|clams|mussels|scallops|prawns|shellfish|cod|sushi|tofu|rice|pasta|noodles|beans|pickles|olives|tomatoes|onions|peppers|mushrooms|cucumbers|potatoes|fries|wings|steak|steaks|burgers|hamburger|hamburgers|patties|hot dogs|ribs|lamb|veal|duck|pudding|custard|cheesecake|cake|cakes|pie|pies|pastries|pizza|pizzas|juice|wine|flowers|salsa|gravy|chili|broth|sandwiches|wraps|fruit|berries|strawberries|melon|greens|spinach|cabbage|batter|half and half|creamer|mayo|ham|bacon|sausage|tuna|dressing)`;
