import type { ValuePath } from '@fillwright/contract/files';
import type { ReactElement, ReactNode } from 'react';
import { ListField } from '../../../fields/index.ts';
import { countIn } from '../brief-document.ts';
import { useBriefForm, useField } from '../form-context.ts';

interface ListAtProps {
  readonly at: ValuePath;
  readonly itemName: (n: number) => string;
  readonly addName: string;
  /** What stands in a new item. */
  readonly blank: (n: number) => unknown;
  readonly item: (at: ValuePath) => ReactNode;
  readonly isPlain?: boolean;
}

/** A list of the brief. The last item takes its list along: an empty list says no more than none. */
export function ListAt({ at, itemName, addName, blank, item, isPlain = false }: ListAtProps): ReactElement {
  const { document, change } = useBriefForm();
  const { field, limits } = useField(at);
  const count = countIn(document.value, at);
  return (
    <ListField
      {...{ id: field.id, label: field.label, help: field.help, fault: field.fault, count, addName, isPlain }}
      mostCount={limits.mostCount ?? Infinity}
      itemName={(index) => itemName(index + 1)}
      item={(index) => item([...at, index])}
      onAdd={() => {
        change([[...at, count], blank(count + 1)]);
      }}
      onRemove={(index) => {
        change([[...at, index], undefined]);
      }}
    />
  );
}
