/** What lies at an address; rejects where it does not answer. */
export async function fetchText(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} answered ${response.status}`);
  return response.text();
}
