import { join } from 'node:path';
import type { Metadata } from 'next';
import { DemonstrationButton } from '@/app/_parts/demonstration-button';
import { OlderJobsButton } from '@/app/_parts/older-jobs-button';
import { database } from '@/db/open';
import { calendarOf, synonymsOf } from '@/lib/archive/store';
import { logoOf } from '@/lib/handover/store';
import { listFolders } from '@/lib/media/store';
import { slangOf } from '@/lib/narration/store';
import { listMeters } from '@/lib/readings/store';
import { serialPatternsOf, workshopOf } from '@/lib/work/store';
import { ArchiveCalendarSheet } from './_archive/calendar';
import { Synonyms } from './_archive/synonyms';
import { Meters } from './_meters/meters';
import { SerialPatterns } from './_serials/serial-patterns';
import { Folders } from './_settings/folders';
import { WhoMayOpen } from './_settings/who-may-open';
import { OwnWords } from './_slang/slang';
import { WorkshopLogo } from './_workshop/logo';
import { WorkshopSheet } from './_workshop/workshop';
import styles from './settings.module.css';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Settings' };

export default function SettingsPage() {
  const home = process.env.BENCHTAKE_HOME ?? '';
  return (
    <main className={styles.page}>
      <h1 className={styles.title}>Settings</h1>
      <Folders folders={listFolders(database())} hereMinutes={-new Date().getTimezoneOffset()} />
      <Meters meters={listMeters(database())} />
      <OwnWords first={slangOf(database())} />
      <section className={styles.sheet} aria-labelledby="archive">
        <h2 id="archive">Archive</h2>
        <ArchiveCalendarSheet first={calendarOf(database())} />
        <Synonyms first={synonymsOf(database())} />
      </section>
      <SerialPatterns first={serialPatternsOf(database())} />
      <WorkshopSheet first={workshopOf(database())} />
      <WorkshopLogo first={logoOf() !== null} />
      <section className={styles.sheet} aria-labelledby="data">
        <h2 id="data">Data folder</h2>
        <p>
          Everything that Benchtake writes lies here: the record, sound strips, stills, viewing copies, public
          cuts, and recordings that were sent from other devices.
        </p>
        <p className={styles.path}>{home}</p>
        <p>
          Before a new version changes the record, a whole copy of it is put into the folder below; the newest
          five are kept. Back up the data folder and your recordings folders together: recordings that lie in
          folders of yours are not in it.
        </p>
        <p className={styles.path}>{join(home, 'backups')}</p>
      </section>
      <WhoMayOpen host={process.env.HOST ?? '127.0.0.1'} />
      <section className={styles.sheet} aria-labelledby="demonstration">
        <h2 id="demonstration">Demonstration jobs</h2>
        <p>
          An invented job with three short takes, to try things on, and invented older jobs, to ask the
          archive about. Delete them like any other job.
        </p>
        <DemonstrationButton />
        <OlderJobsButton />
      </section>
    </main>
  );
}
