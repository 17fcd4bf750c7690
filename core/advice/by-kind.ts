/** The members of a union that carry one value of its discriminant, also where a member lists several. */
export type Narrow<Union, Key extends keyof Union, Value extends string> = Union extends unknown
  ? Value extends Union[Key]
    ? Omit<Union, Key> & { readonly [K in Key]: Value }
    : never
  : never;

/**
 * The same union as a table by discriminant. Written as `Members[K]` under a type parameter `K`, a total
 * record of functions can be called with a member without an assertion, and a forgotten kind does not compile.
 */
export type Members<Union, Key extends keyof Union> = {
  readonly [Value in Union[Key] & string]: Narrow<Union, Key, Value>;
};
