import type { OlderClient, OlderJob } from './demo-types';
import { olderJobs2023 } from './older-jobs-2023';
import { olderJobs2024 } from './older-jobs-2024';
import { olderJobs2025 } from './older-jobs-2025';
import { olderJobs2026 } from './older-jobs-2026';

/**
 * Jobs from the years before the camera: invented from end to end, so that the archive has something to be asked
 * about. Figures are of the size that is usual in the trade (common practice, no source).
 */
export const olderJobs: readonly OlderJob[] = [
  ...olderJobs2023,
  ...olderJobs2024,
  ...olderJobs2025,
  ...olderJobs2026,
];

export const olderClients: readonly OlderClient[] = [
  { name: 'Odo Thimblewick', alias: 'a function-band guitarist', phone: '555-0101' },
  { name: 'Perpetua Brindlecroft', alias: 'a recording studio', phone: '555-0102' },
  { name: 'Tam Nettlebag', alias: 'a player who tinkers', phone: '555-0103' },
  { name: 'Wilhelmine Dustpan', alias: 'a bass player', phone: '555-0104' },
  { name: 'Ignatz Pumpernickle', alias: 'a weekend guitarist', phone: '555-0105' },
  { name: 'Clementa Foghorn', alias: 'a folk singer', phone: '555-0106' },
  { name: 'Barnaby Sprocketson', alias: 'a session guitarist', phone: '555-0107' },
  { name: 'Euphemia Lanternjaw', alias: 'a music teacher', phone: '555-0108' },
  { name: 'Rufus Candlegrease', alias: 'a guitar student', phone: '555-0109' },
  { name: 'Sibylla Hatstand', alias: 'a ukulele club', phone: '555-0110' },
  { name: 'Jasper Wobblethorpe', alias: 'a rehearsal room', phone: '555-0111' },
  { name: 'Hester Gravyboat', alias: 'a banjo player', phone: '555-0112' },
  { name: 'Linus Featherbolt', alias: 'a blues guitarist', phone: '555-0113' },
  { name: 'Ottoline Mothwing', alias: 'a school orchestra', phone: '555-0114' },
  { name: 'Gideon Sagebucket', alias: 'a heavy-rock guitarist', phone: '555-0115' },
  { name: 'Tabitha Crumpetello', alias: 'a mandolin player', phone: '555-0116' },
  { name: 'Florian Puddlemere', alias: 'a country guitarist', phone: '555-0117' },
  { name: 'Augusta Pennywhisk', alias: 'a string quartet', phone: '555-0118' },
];
