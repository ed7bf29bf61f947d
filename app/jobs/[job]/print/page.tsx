import { networkInterfaces } from 'node:os';
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { type BenchAddress, benchAddress, paperOf, printedTicket } from '@/lib/work';
import { PaperBar } from './_paper/paper-bar';
import { PaperTicket } from './_paper/paper-ticket';
import './_paper/paper.css';
import { recordOrNull } from '../_desk/record-or-null';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Ticket on paper' };

interface Props {
  params: Promise<{ job: string }>;
  searchParams: Promise<{ paper?: string | string[] }>;
}

/** The ticket on one page, to lie with the instrument. */
export default async function PrintPage({ params, searchParams }: Props) {
  const record = recordOrNull((await params).job);
  if (!record || record.job.deletedAt !== null) notFound();
  const paper = paperOf((await searchParams).paper);
  const address = await addressOfBench();
  return (
    <main>
      <PaperBar job={record.job} paper={paper} reachable={address.otherDevices} />
      <PaperTicket
        job={record.job}
        ticket={printedTicket(record, paper)}
        paper={paper}
        address={{ ...address, job: `${address.origin}/jobs/${record.job.id}` }}
        printedAt={Date.now()}
      />
    </main>
  );
}

async function addressOfBench(): Promise<BenchAddress> {
  const asked = await headers();
  return benchAddress({
    host: asked.get('host') ?? 'localhost',
    protocol: asked.get('x-forwarded-proto') === 'https' ? 'https' : 'http',
    listensOn: process.env.HOST ?? '127.0.0.1',
    port: Number(process.env.PORT ?? 4680),
    cards: Object.values(networkInterfaces()).flatMap((card) => card ?? []),
  });
}
