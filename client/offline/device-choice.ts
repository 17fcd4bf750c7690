/** One choice of this device's, which no visit carries along; the first of the list until another is chosen. */
export interface DeviceChoice<Choice> {
  readonly read: () => Choice;
  readonly choose: (choice: Choice) => void;
}

/** All choices of this device. */
export interface DeviceChoices {
  readonly of: <Choice extends string>(
    name: string,
    choices: readonly [Choice, ...Choice[]],
  ) => DeviceChoice<Choice>;
  /** One text, '' until there is one. */
  readonly text: (name: string) => DeviceChoice<string>;
}

/** Where storage is off or full, a choice holds until the page is closed, and `onNotKept` tells so. */
export function createDeviceChoices(
  storage: () => Pick<Storage, 'getItem' | 'setItem'>,
  onNotKept: () => void,
): DeviceChoices {
  const kept = (name: string): string | null => {
    try {
      return storage().getItem(keyOf(name));
    } catch (error) {
      console.error(error);
      return null;
    }
  };
  const keep = (name: string, value: string): void => {
    try {
      storage().setItem(keyOf(name), value);
    } catch (error) {
      console.error(error);
      onNotKept();
    }
  };
  const choice = <Value extends string>(name: string, first: Value): DeviceChoice<Value> => {
    let chosen = first;
    return {
      read: () => chosen,
      choose(next) {
        chosen = next;
        keep(name, next);
      },
    };
  };
  return {
    of(name, choices) {
      const before = kept(name);
      return choice(name, choices.find((each) => each === before) ?? choices[0]);
    },
    text: (name) => choice<string>(name, kept(name) ?? ''),
  };
}

const keyOf = (name: string): string => `gloveside: ${name}`;
