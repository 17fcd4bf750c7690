/** All that comes, in order. */
export async function collect<Item>(items: AsyncIterable<Item>): Promise<readonly Item[]> {
  const collected: Item[] = [];
  for await (const item of items) collected.push(item);
  return collected;
}
