'use client';

import { useMemo, useState } from 'react';
import { Button, buttonClass } from '@/app/_parts/button';
import { Dialog } from '@/app/_parts/dialog';
import { useNotices } from '@/app/_parts/notices';
import { chaptersOf, layOut } from '@/lib/film';
import { chapterFormats } from '@/lib/handover';
import styles from './desk.module.css';
import { useDesk } from './use-record';

/** The chapter list as it goes under the video: to copy, or to save. */
export function ChapterList({ open, onClose }: { open: boolean; onClose: () => void }) {
  const { record } = useDesk();
  const { done, wrong } = useNotices();
  const [copied, setCopied] = useState<string | null>(null);
  const chapters = useMemo(
    () => chaptersOf(layOut(record.takes), record.markers, record.job.title),
    [record.takes, record.markers, record.job.title],
  );
  const text = chapterFormats.text.write(chapters);
  const copy = () =>
    navigator.clipboard.writeText(text).then(() => {
      setCopied(text);
      done('Chapter list copied');
    }, wrong);
  const address = `/api/jobs/${record.job.id}/exports/chapters?as=`;
  return (
    <Dialog open={open} onClose={onClose} title="Chapter list">
      {chapters.length === 0 ? (
        <p>Public markers become chapters. Drop a marker and leave “Chapter” ticked.</p>
      ) : (
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
              {copied === text ? 'Copied' : 'Copy'}
            </Button>
            <a
              className={buttonClass()}
              href={`${address}text`}
              download={`job-${record.job.number}-chapters.txt`}
            >
              Save as text
            </a>
            <a
              className={buttonClass()}
              href={`${address}webvtt`}
              download={`job-${record.job.number}-chapters.vtt`}
            >
              Save as WebVTT
            </a>
          </div>
        </>
      )}
    </Dialog>
  );
}
