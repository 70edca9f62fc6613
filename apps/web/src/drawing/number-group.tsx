import {
  createContext,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
  type CSSProperties,
  type FocusEvent,
  type KeyboardEvent,
  type ReactNode,
} from 'react';

/** Name of a number, as its `data-number` has it. */
type Name = string;

interface Group {
  /** The one number of the group that Tab stops at; undefined until there is one. */
  readonly stop: Name | undefined;
  /** Told whenever a number came or went: the stop must be one that is there. */
  readonly settle: () => void;
}

const GroupContext = createContext<Group | undefined>(undefined);

interface NumberGroupProps {
  readonly as?: 'div' | 'table' | 'tr';
  /** Name of the group for a screen reader; left out where a table says it. */
  readonly label?: string;
  readonly className?: string;
  readonly style?: CSSProperties;
  readonly children: ReactNode;
}

const NUMBERS = '[data-number]';
const isWay = (key: string): key is keyof typeof WAYS => key in WAYS;
const WAYS = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1, Home: -Infinity, End: Infinity } as const;

/** Numbers that belong together are one stop of Tab; arrow keys, Home and End go from one to the next. */
export function NumberGroup({ as: Element = 'div', label, children, ...rest }: NumberGroupProps): ReactNode {
  const root = useRef<HTMLElement>(null);
  const [stop, setStop] = useState<Name>();
  const settle = useCallback(() => {
    const names = numbersIn(root.current).map(({ dataset }) => dataset['number']);
    setStop((before) => (names.includes(before) ? before : names[0]));
  }, []);
  const group = useMemo(() => ({ stop, settle }), [stop, settle]);
  const onFocus = ({ target }: FocusEvent<HTMLElement>): void => {
    const name = target.dataset['number'];
    if (name !== undefined) setStop(name);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    const { key, ctrlKey, metaKey, altKey } = event;
    const numbers = numbersIn(root.current);
    const at = numbers.findIndex((one) => one === event.target);
    if (at < 0 || !isWay(key) || ctrlKey || metaKey || altKey) return;
    event.preventDefault();
    numbers[Math.min(numbers.length - 1, Math.max(0, at + WAYS[key]))]?.focus();
  };
  const named = label === undefined ? {} : { role: 'toolbar', 'aria-label': label };
  return (
    <Element ref={root as never} {...rest} {...named} onFocus={onFocus} onKeyDown={onKeyDown}>
      <GroupContext value={group}>{children}</GroupContext>
    </Element>
  );
}

/**
 * Whether Tab stops at a number.
 *
 * @param name - of the number
 * @returns 0 for the number of its group where Tab stops, −1 for the others; undefined outside of a group
 */
export function useNumberStop(name: Name): 0 | -1 | undefined {
  const group = useContext(GroupContext);
  const settle = group?.settle;
  useEffect(() => {
    settle?.();
    return settle;
  }, [settle, name]);
  if (!group) return undefined;
  return group.stop === name ? 0 : -1;
}

function numbersIn(root: HTMLElement | null): readonly HTMLElement[] {
  return [...(root?.querySelectorAll<HTMLElement>(NUMBERS) ?? [])];
}
