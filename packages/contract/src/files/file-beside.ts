/**
 * The path of a file that another one names, as seen from the same place.
 *
 * @param path - the file that names it, relative or absolute
 * @param name - the name it gives, relative to its own folder, with slashes
 * @returns for example `briefs/a.yaml` and `../fillers/b.yaml` give `fillers/b.yaml`
 */
export function fileBeside(path: string, name: string): string {
  const whole = `${/^.*[/\\]/.exec(path)?.[0] ?? ''}${name}`;
  const root = whole.startsWith('/') ? '/' : '';
  const steps: string[] = [];
  for (const step of whole.split('/').filter((each) => each !== '' && each !== '.')) {
    const isInside = steps.length > 0 && steps.at(-1) !== '..';
    if (step !== '..') steps.push(step);
    else if (isInside) steps.pop();
    else if (root === '') steps.push('..');
  }
  return root + steps.join('/');
}
