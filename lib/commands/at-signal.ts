/** Exit codes by which a shell knows a program that a signal ended: 128 and the signal's number. */
const CODES = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;
type Stop = keyof typeof CODES;

/**
 * Clean up when the command is told to stop, then end it.
 * @returns what takes the handlers away again, when there is nothing left to clean up.
 */
export function atSignal(cleanUp: () => Promise<void>): () => void {
  const stop = (signal: Stop): void => {
    isOver();
    void cleanUp().finally(() => process.exit(CODES[signal]));
  };
  const isOver = (): void => {
    for (const signal of Object.keys(CODES)) process.off(signal, stop);
  };
  for (const signal of Object.keys(CODES)) process.on(signal, stop);
  return isOver;
}
