/** A lever that has not moved for so long is at rest: longer than a few frames, shorter than a person notices. */
const REST_ms = 120;

/** Waits as long as a held lever stands before the dear part is computed for it. */
export const rest = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, REST_ms);
  });
