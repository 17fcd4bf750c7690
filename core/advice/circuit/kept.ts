/** A function of a value that never changes, worked out on first use. */
export function kept<Of extends object, Value>(make: (of: Of) => Value): (of: Of) => Value {
  const values = new WeakMap<Of, Value>();
  return (of) => {
    const value = values.get(of) ?? make(of);
    values.set(of, value);
    return value;
  };
}
