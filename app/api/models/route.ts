import { home } from '@/db/open';
import { modelsFolder, speechModels } from '@/lib/narration/store';
import { route } from '../_http/route';

export const dynamic = 'force-dynamic';

/** Speech models that lie on this machine. */
export const GET = route(() => Response.json({ folder: modelsFolder(home()), models: speechModels(home()) }));
