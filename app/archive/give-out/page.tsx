import type { Metadata } from 'next';
import { GiveOutDesk } from './_give-out/give-out-desk';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Give out · Archive' };

export default function GiveOutPage() {
  return <GiveOutDesk />;
}
