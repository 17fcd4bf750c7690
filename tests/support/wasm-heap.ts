/** Import it before anything that runs WebAssembly: it watches from then on. */
const memories = new Set<WebAssembly.Memory>();
const { Memory, instantiate } = WebAssembly;

class WatchedMemory extends Memory {
  constructor(descriptor: WebAssembly.MemoryDescriptor) {
    super(descriptor);
    memories.add(this);
  }
}

Reflect.set(WebAssembly, 'Memory', WatchedMemory);
// Some modules make their memory themselves and give it out.
Reflect.set(WebAssembly, 'instantiate', async (...given: Parameters<typeof instantiate>) => {
  const made: unknown = await Reflect.apply(instantiate, WebAssembly, given);
  for (const memory of memoriesIn(made)) memories.add(memory);
  return made;
});

function memoriesIn(made: unknown): readonly WebAssembly.Memory[] {
  const instance: unknown =
    made instanceof WebAssembly.Instance ? made : Reflect.get(Object(made), 'instance');
  if (!(instance instanceof WebAssembly.Instance)) return [];
  return Object.values(instance.exports).filter((each) => each instanceof Memory);
}

/** Bytes of every WebAssembly memory made since: they only ever grow. */
export const wasmHeapBytes = (): number =>
  [...memories].reduce((sum, { buffer }) => sum + buffer.byteLength, 0);
