'use client';

import { Tabs } from '@base-ui/react/tabs';
import { counted } from '@/app/_parts/words';
import { shortTime } from '@/lib/film';
import { chapterRules } from '@/lib/handover';
import type { HandOverView } from '@/shared/hand-over';
import { ChaptersPart } from './chapters-part';
import { CutPart } from './cut-part';
import styles from './hand-over.module.css';
import { openIn } from './held-back';
import { NotesPart } from './notes-part';
import { SummaryPart } from './summary-part';
import { useHandOver } from './use-hand-over';
import { type DocumentName, documentNames } from './use-open-document';

const documents: Record<
  DocumentName,
  { title: string; of: (view: HandOverView) => string[]; Part: () => React.ReactNode }
> = {
  chapters: {
    title: 'Chapter list',
    of: ({ chapters: { chapters }, cut }) => [
      counted(chapters.length, 'chapter'),
      ...said(rulesBroken(chapters, cut.durationMs), 'host rule broken', 'host rules broken'),
      ...said(openIn(cut.findings, 'chapters').length, 'private finding'),
    ],
    Part: ChaptersPart,
  },
  notes: {
    title: 'Episode notes',
    of: ({ notes: { sections }, cut }) => [
      counted(sections.filter(({ on }) => on).length, 'section'),
      ...said(sections.filter(({ behind }) => behind).length, 'behind the record', 'behind the record'),
      ...said(openIn(cut.findings, 'notes').length, 'private finding'),
    ],
    Part: NotesPart,
  },
  summary: {
    title: 'Client summary',
    of: ({ summary: { kept, stills } }) => [
      kept.paper === 'a4' ? 'A4' : 'Letter',
      counted(kept.stills?.length ?? stills.filter(({ usual }) => usual).length, 'still'),
    ],
    Part: SummaryPart,
  },
  cut: {
    title: 'Public cut',
    of: ({ cut }) => [
      `${shortTime(cut.durationMs)} long`,
      cut.task
        ? 'under way'
        : cut.made.length > 0
          ? counted(cut.made.length, 'made', 'made')
          : 'not made yet',
      ...said(openIn(cut.findings, 'cut').length, 'private finding'),
    ],
    Part: CutPart,
  },
};

/** A list with nothing in it breaks no rule yet. */
function rulesBroken(chapters: HandOverView['chapters']['chapters'], durationMs: number): number {
  return chapters.length === 0 ? 0 : chapterRules(chapters, durationMs).length;
}

function said(count: number, one: string, many?: string): string[] {
  return count > 0 ? [counted(count, one, many)] : [];
}

interface DocumentTabsProps {
  shown: DocumentName;
  onShow: (name: DocumentName) => void;
}

/** The four documents side by side as stubs that say how they stand; one of them lies open below. */
export function DocumentTabs({ shown, onShow }: DocumentTabsProps) {
  const { view } = useHandOver();
  return (
    <Tabs.Root value={shown} onValueChange={onShow} className={styles.documents}>
      <Tabs.List className={styles.stubs} aria-label="Documents" activateOnFocus>
        {documentNames.map((name) => (
          <Tabs.Tab key={name} value={name} className={styles.stub}>
            <span className={styles.stubTitle}>{documents[name].title}</span>
            {documents[name].of(view).map((words) => (
              <span key={words} className={styles.stubWords}>
                {words}
              </span>
            ))}
          </Tabs.Tab>
        ))}
      </Tabs.List>
      {documentNames.map((name) => {
        const { Part } = documents[name];
        return (
          <Tabs.Panel key={name} value={name} className={styles.panel}>
            <Part />
          </Tabs.Panel>
        );
      })}
    </Tabs.Root>
  );
}
