import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { KeyboardEvent, ReactElement } from 'react';

interface TabListProps<Tab> {
  readonly tabs: readonly Tab[];
  readonly tab: Tab;
  readonly onTab: (tab: Tab) => void;
  readonly label: string;
}

/** Ways to see a text. Arrow keys, Home and End move along. */
export function TabList<Tab extends keyof typeof BRIEF_PAGE_WORDS.tabs>(props: TabListProps<Tab>): ReactElement {
  const { tabs, tab, onTab, label } = props;
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>): void => {
    const at = tabs.indexOf(tab);
    const last = tabs.length - 1;
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: last }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = tabs.at(to > last ? 0 : to) ?? tab;
    onTab(next);
    document.getElementById(`brief-tab-${next}`)?.focus();
  };
  return (
    <div className="brief-tabs" role="tablist" aria-label={label} onKeyDown={onKeyDown}>
      {tabs.map((each) => (
        <button
          key={each}
          type="button"
          role="tab"
          id={`brief-tab-${each}`}
          className="brief-tab"
          aria-selected={each === tab}
          aria-controls="brief-panel"
          tabIndex={each === tab ? 0 : -1}
          onClick={() => {
            onTab(each);
          }}
        >
          {BRIEF_PAGE_WORDS.tabs[each]}
        </button>
      ))}
    </div>
  );
}
