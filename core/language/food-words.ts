/** What is kept cold, as whoever asks about it says it. */
export const FOOD =
  '(food|foods|product|products|meat|meats|milk|dairy|produce|chicken|fish|seafood|beef|pork|turkey|shrimp|salmon|eggs|cheese|yogurt|butter|ice cream|lettuce|salad|salads|soup|sauce|sauces|dough|stock|inventory|leftovers|deli meat|cream|stuff [(in there|in it|in the box)])';

/** Who is told, and who throws out. */
export const THEM =
  '(them|him|her|the (customer|owner|manager|chef|cook|cooks|staff|kitchen|crew|lady|guy|people)|customer|owner|manager|staff|everybody|everyone)';
