import type { NamedFile, RestedFile } from '../state/index.ts';

/** A filler or shell of which the brief is read in a newer version than the one that the design rests on. */
export interface OlderFile extends NamedFile {
  readonly version: number;
  /** Version that the design rests on; left out: the example of that name. */
  readonly older: number | undefined;
}

/**
 * Files of which the design rests on an older version than the one that the page computes with.
 *
 * @param restedOn - as the kept design has them
 * @param files - as the brief was read now
 * @returns those that are newer now
 */
export function olderFiles(restedOn: readonly RestedFile[], files: readonly NamedFile[]): readonly OlderFile[] {
  return files.flatMap((file) => {
    const rested = restedOn.find((one) => one.file === file.file);
    const { version } = file;
    return rested === undefined || version === undefined || (rested.version ?? 0) >= version
      ? []
      : [{ ...file, version, older: rested.version }];
  });
}
