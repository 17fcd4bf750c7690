/** One choice of this device's, which no visit carries along; the first of the list until another is chosen. */
export interface DeviceChoice<Choice> {
  readonly read: () => Choice;
  readonly choose: (choice: Choice) => void;
}

/** Where storage is off, the choice holds until the page is closed. */
export function createDeviceChoice<Choice extends string>(
  name: string,
  choices: readonly [Choice, ...Choice[]],
): DeviceChoice<Choice> {
  const key = `gloveside: ${name}`;
  let chosen: Choice = choices.find((each) => each === stored(key)) ?? choices[0];
  return {
    read: () => chosen,
    choose: (choice) => {
      chosen = choice;
      try {
        localStorage.setItem(key, choice);
      } catch {
        // A private window may refuse: the page goes on with it all the same.
      }
    },
  };
}

/** One text of this device's, '' until there is one. */
export function createDeviceText(name: string): DeviceChoice<string> {
  const key = `gloveside: ${name}`;
  let text = stored(key) ?? '';
  return {
    read: () => text,
    choose: (next) => {
      text = next;
      keep(key, next);
    },
  };
}

/** A private window may refuse: the page goes on with it all the same. */
function keep(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch (error) {
    console.error(error);
  }
}

function stored(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}
