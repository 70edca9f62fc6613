/** What a browser keeps for a page. It may be off, private or full: nothing here ever throws. */
export interface BrowserBox {
  readonly get: (key: string) => string | undefined;
  /** False when the browser did not take it. */
  readonly set: (key: string, value: string) => boolean;
  readonly remove: (key: string) => void;
  readonly keys: () => readonly string[];
}

/**
 * @param storage - gives the storage; already that may be refused
 * @returns the box over it
 */
export function browserBox(storage: () => Storage): BrowserBox {
  const tried = <Result>(work: (box: Storage) => Result, otherwise: Result): Result => {
    try {
      return work(storage());
    } catch {
      return otherwise;
    }
  };
  return {
    get: (key) => tried((box) => box.getItem(key) ?? undefined, undefined),
    set: (key, value) =>
      tried((box) => {
        box.setItem(key, value);
        return true;
      }, false),
    remove: (key) => {
      tried((box) => {
        box.removeItem(key);
      }, undefined);
    },
    keys: () =>
      tried(
        (box) => Array.from({ length: box.length }, (_, index) => box.key(index)).filter((key) => key !== null),
        [],
      ),
  };
}
