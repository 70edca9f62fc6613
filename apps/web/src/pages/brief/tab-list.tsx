import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { KeyboardEvent, ReactElement } from 'react';

const TABS = ['form', 'text', 'history'] as const;
export type Tab = (typeof TABS)[number];

/** Form, text, history. Arrow keys, Home and End move along. */
export function TabList({ tab, onTab }: { tab: Tab; onTab: (tab: Tab) => void }): ReactElement {
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>): void => {
    const at = TABS.indexOf(tab);
    const last = TABS.length - 1;
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: last }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = TABS.at(to > last ? 0 : to) ?? tab;
    onTab(next);
    document.getElementById(`brief-tab-${next}`)?.focus();
  };
  return (
    <div className="brief-tabs" role="tablist" aria-label={BRIEF_PAGE_WORDS.tabsLabel} onKeyDown={onKeyDown}>
      {TABS.map((each) => (
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
