'use client';

import { useEffect, useState } from 'react';
import { Button, ButtonLink, buttonClass } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { chapterFormats } from '@/lib/handover';
import { type ChapterListFile, chapterListSchema } from '@/shared/handover';
import styles from './desk.module.css';
import { useDesk } from './use-record';

/** The chapter list as it goes under the video: to copy, or to save. It is that of the film as it is published. */
export function ChapterList({ open, onClose }: { open: boolean; onClose: () => void }) {
  return (
    <Dialog open={open} onClose={onClose} title="Chapter list">
      {open && <List />}
    </Dialog>
  );
}

function List() {
  const { job } = useDesk().record;
  const address = `/api/jobs/${job.id}/exports/chapters?as=`;
  const [list, setList] = useState<ChapterListFile | null>(null);
  const [problem, setProblem] = useState<unknown>(null);
  useEffect(() => {
    call('GET', `${address}json`, chapterListSchema).then(setList, setProblem);
  }, [address]);
  const handOver = <ButtonLink href={`/jobs/${job.id}/hand-over`}>To the hand-over</ButtonLink>;
  if (problem !== null) return <ProblemNote error={problem}>{handOver}</ProblemNote>;
  if (!list) return <p role="status">Making the list …</p>;
  if (list.chapters.length === 0)
    return <p>Public markers become chapters. Drop a marker and leave “Chapter” ticked.</p>;
  return (
    <>
      <Text chapters={list.chapters} />
      <div className={styles.row}>
        {Object.entries(chapterFormats).map(([name, { label, extension }]) => (
          <a
            key={name}
            className={buttonClass()}
            href={`${address}${name}`}
            download={`job-${job.number}-chapters.${extension}`}
          >
            Save as {label}
          </a>
        ))}
        {handOver}
      </div>
    </>
  );
}

function Text({ chapters }: Pick<ChapterListFile, 'chapters'>) {
  const { done, wrong } = useNotices();
  const [copied, setCopied] = useState(false);
  const text = chapterFormats.text.write(chapters);
  const copy = () =>
    navigator.clipboard.writeText(text).then(() => {
      setCopied(true);
      done('Chapter list copied');
    }, wrong);
  return (
    <>
      <textarea
        className={styles.chapters}
        data-chapters
        aria-label="Chapter list as text"
        readOnly
        rows={Math.min(16, chapters.length + 1)}
        value={text}
      />
      <div className={styles.row}>
        <Button weight="main" onClick={() => void copy()}>
          {copied ? 'Copied' : 'Copy'}
        </Button>
      </div>
    </>
  );
}
