'use client';

import { useRef, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import settings from '../settings.module.css';
import styles from './workshop.module.css';

const address = '/api/workshop/logo';
const doneSchema = z.unknown();

/** The workshop's own sign, for the head of what is printed. */
export function WorkshopLogo({ first }: { first: boolean }) {
  const { done, wrong } = useNotices();
  const { busy, problem, run } = useAttempt();
  const box = useRef<HTMLInputElement>(null);
  const [isThere, setThere] = useState(first);
  // The picture lies at one address: another number asks for it anew.
  const [version, setVersion] = useState(0);
  const put = async (picture: Blob, told: string) => {
    await call('PUT', address, doneSchema, picture);
    setThere(true);
    setVersion((before) => before + 1);
    done(told);
  };
  const choose = (event: React.ChangeEvent<HTMLInputElement>) => {
    const [picture] = event.currentTarget.files ?? [];
    event.currentTarget.value = '';
    if (picture) void run(() => put(picture, 'Logo kept'));
  };
  const remove = () =>
    run(async () => {
      const before = await (await fetch(address)).blob();
      await call('DELETE', address, doneSchema);
      setThere(false);
      done('Logo removed', () => void put(before, 'Logo put back').catch(wrong));
    });
  return (
    <section className={settings.sheet} aria-labelledby="logo">
      <h2 id="logo">Logo</h2>
      <p>A PNG or JPEG picture under 5 MB. It stands at the head of the client summary.</p>
      {isThere && (
        // biome-ignore lint/performance/noImgElement: a picture of the workshop's own, of any size.
        <img className={styles.logo} src={`${address}?version=${version}`} alt="The workshop’s logo" />
      )}
      <div className={styles.ways}>
        <input
          ref={box}
          id="logo-file"
          type="file"
          accept="image/png,image/jpeg"
          className="only-read"
          tabIndex={-1}
          aria-label="Picture of the logo"
          onChange={choose}
        />
        <Button aria-disabled={busy} onClick={() => box.current?.click()}>
          {isThere ? 'Choose another picture' : 'Choose a picture'}
        </Button>
        {isThere && (
          <Button weight="bare" aria-disabled={busy} onClick={() => void remove()}>
            Remove the logo
          </Button>
        )}
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </section>
  );
}
