'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { useNotices } from '@/app/_parts/notices';
import { saveFile } from '@/app/_parts/save-file';
import { captionOf, type SavedLine } from '@/lib/handover';
import { useDesk } from '../_desk/use-record';
import { fetchFile } from './fetch-file';
import styles from './sheet.module.css';

/** A marker or a reading for a message to the client: its picture, a short clip, its words. */
export function SaveLine({ line }: { line: SavedLine }) {
  const { record } = useDesk();
  const notices = useNotices();
  const [making, setMaking] = useState<'still' | 'clip' | null>(null);
  const id = line.type === 'marker' ? line.marker.id : line.reading.id;
  const save = async (what: 'still' | 'clip') => {
    if (making) return;
    setMaking(what);
    try {
      const file = await fetchFile(`/api/jobs/${record.job.id}/exports/${what}?line=${id}`);
      saveFile(file);
      notices.done(`Saved as ${file.name}`);
    } catch (error) {
      notices.wrong(error);
    } finally {
      setMaking(null);
    }
  };
  const copy = () =>
    navigator.clipboard
      .writeText(captionOf(line))
      .then(() => notices.done('Caption copied'))
      .catch(notices.wrong);
  return (
    <fieldset className={styles.saving}>
      <legend className={styles.fine}>For a message</legend>
      <Button aria-disabled={making !== null} onClick={() => void save('still')}>
        {making === 'still' ? 'Taking the still…' : 'Save a still'}
      </Button>
      <Button aria-disabled={making !== null} onClick={() => void save('clip')}>
        {making === 'clip' ? 'Cutting the clip…' : 'Save a clip'}
      </Button>
      <Button onClick={() => void copy()}>Copy the caption</Button>
    </fieldset>
  );
}
