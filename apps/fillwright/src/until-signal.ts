const SIGNALS = ['SIGINT', 'SIGTERM'] as const;

/**
 * Waits for the first signal to end. The second one ends the process at once, whatever it is doing.
 *
 * @returns a promise that is kept at the first signal
 */
export function untilSignal(): Promise<void> {
  return new Promise((resolve) => {
    let count = 0;
    const onSignal = (): void => {
      if (++count > 1) process.exit(3);
      resolve();
    };
    for (const signal of SIGNALS) process.on(signal, onSignal);
  });
}
